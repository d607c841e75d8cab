/**
 * Pages written by hand: what shops, law and templates put around a list, one oddity each. Shops, products and
 * sentences are invented. [what is odd, body, the lists: text, or text and product]
 */
const long =
  'Water (Aqua, Eau), Cetearyl Alcohol, Behentrimonium Methosulfate, Glycerin, Cocos Nucifera (Coconut) Oil, Hydrolyzed Quinoa, Panthenol, Parfum (Fragrance), Phenoxyethanol, Citric Acid';
const upper =
  'AQUA / WATER, SODIUM COCOYL ISETHIONATE, COCO-GLUCOSIDE, GLYCERIN, PARFUM / FRAGRANCE, LIMONENE, CITRIC ACID, SODIUM BENZOATE';
const short = 'Aqua, Glycerin, Cetyl Alcohol, Stearic Acid, Carbomer, Parfum';

export type Tricky = [string, string, (string | [string, string])[]];

const items = (...names: string[]) => names.map((name) => `<li>${name}</li>`).join('');

const ticked = (...names: string[]) =>
  items(...names.map((name) => `<label><input type="checkbox"> ${name}</label>`));

export const tricky: Tricky[] = [
  [
    'several things denied before a colon',
    '<h1>Oarlock Curl Cream</h1><p>Free from parabens, silicones and sulphates: Methylparaben, Amodimethicone, Cyclopentasiloxane, Sodium Laureth Sulfate, Phenoxyethanol, Alcohol Denat.</p>',
    [],
  ],
  [
    'several things denied before a colon, by a word at the end',
    '<h1>Oarlock Bukle Kremi</h1><p>Paraben, silikon ve sülfat içermez: Methylparaben, Amodimethicone, Cyclopentasiloxane, Sodium Laureth Sulfate, Phenoxyethanol, Alcohol Denat.</p>',
    [],
  ],
  [
    'a denial, then the list on the next line',
    `<h1>Oarlock Curl Cream</h1><p>Vegan, without silicones: yes<br>${long}</p>`,
    [long],
  ],
  [
    'a caution glued to the end',
    '<h4>Ingredients</h4><p>Water, Glycerin, Oat Milk, Panthenol, Tocopherol. May contain additional traces; the pack decides.</p>',
    ['Water, Glycerin, Oat Milk, Panthenol, Tocopherol.'],
  ],
  [
    'steps of a set in one line',
    `<h4>Ingredients</h4><p>[Step 01] ${short} [Step 02] Aqua, Glycerin, Keratin, Parfum</p>`,
    [
      [short, 'Step 01'],
      ['Aqua, Glycerin, Keratin, Parfum', 'Step 02'],
    ],
  ],
  [
    'no heading, led by the maker’s own base',
    '<h1>Oarlock Bar Soap</h1><p>Lichwater Base, Saponified Olive Oil, Coconut Oil, Shea Butter, Lavender Essential Oil, Kaolin Clay</p>',
    ['Lichwater Base, Saponified Olive Oil, Coconut Oil, Shea Butter, Lavender Essential Oil, Kaolin Clay'],
  ],
  [
    'a number before each line',
    '<h3>Ingredients</h3><p>1) Aqua<br>2) Glycerin<br>3) Cetyl Alcohol<br>4) Panthenol<br>5) Parfum</p>',
    ['1) Aqua\n2) Glycerin\n3) Cetyl Alcohol\n4) Panthenol\n5) Parfum'],
  ],
  [
    'circled numbers',
    '<h3>Ingredients</h3><p>① Aqua ② Glycerin ③ Cetyl Alcohol ④ Panthenol ⑤ Parfum</p>',
    ['① Aqua ② Glycerin ③ Cetyl Alcohol ④ Panthenol ⑤ Parfum'],
  ],
  [
    'the recipe of before and of now',
    `<h3>Ingredients</h3><p>Formula 2024:<br>${long}</p><p>Formula 2026:<br>Papain, ${short}</p>`,
    [
      [long, '2024'],
      [`Papain, ${short}`, '2026'],
    ],
  ],
  [
    'oils alone under a Turkish heading with a dotted capital',
    '<h1>Kıvırcık saç yağı</h1><h3>İçerik</h3><p>Hindistan cevizi yağı, badem yağı, zeytinyağı, susam yağı</p>',
    ['Hindistan cevizi yağı, badem yağı, zeytinyağı, susam yağı'],
  ],
  [
    'heading of a Korean shop in the words of the law',
    `<h4>화장품법에 따라 기재해야 하는 모든 성분</h4><p>${short}</p>`,
    [short],
  ],
  [
    'h3 strong inside p with br and nbsp',
    `<div><p><strong>INGREDIENTS:&nbsp;</strong><br>${long}</p><p>&nbsp;</p><p><strong>HOW TO USE</strong><br>Apply to hair.</p></div>`,
    [long],
  ],
  ['label p + p', `<p class=label>Ingredients</p><p>${long}.</p><p>Size: 250 ml</p>`, [`${long}.`]],
  [
    'inside one p with description before and directions after, br',
    `<p>Great for curls!<br><br>Ingredients: ${long}<br><br>Directions: Apply evenly to hair and rinse.</p>`,
    [long],
  ],
  [
    'no breaks at all description',
    `<p>A rich cream for dry hair. Directions: Apply a coin-sized amount. Ingredients: ${long}. Warning: Avoid contact with eyes.</p>`,
    [`${long}.`],
  ],
  ['uppercase', `<h4>INGREDIENTS</h4><div>${upper}</div><h4>SHIPPING</h4><div>Free over 50</div>`, [upper]],
  [
    'heading with product name line',
    `<h3>Ingredients</h3><p><em>Curl Milk 200ml</em></p><p>${long}</p>`,
    [long],
  ],
  [
    'note before list',
    `<h3>Ingredients</h3><p>Our formulas may change. Please check the pack.</p><p>${long}</p>`,
    [long],
  ],
  ['note before list same p', `<h3>Ingredients</h3><p>Vegan and cruelty free.<br>${long}</p>`, [long]],
  ['bracket inci', `<p><b>Ingredients (INCI):</b> ${long}</p>`, [long]],
  ['inci dash', `<p>INCI – ${long}</p>`, [long]],
  [
    'INCI: in tab with h2 Inhaltsstoffe',
    `<h2>Inhaltsstoffe</h2><p>INCI: ${long}</p><p>Vegan: ja</p>`,
    [long],
  ],
  [
    'key + full in one p',
    `<p><b>Key Ingredients:</b> Coconut Oil, Panthenol, Quinoa<br><b>All Ingredients:</b> ${long}</p>`,
    [long],
  ],
  [
    'key list then full list h',
    `<h3>Key ingredients</h3><p>Coconut oil: softens.<br>Panthenol: moisturises.</p><h3>Full Ingredients</h3><p>${long}</p>`,
    [long],
  ],
  [
    'lower-case',
    '<h3>Ingredients</h3><p>water (aqua, eau), cetearyl alcohol, behentrimonium methosulfate, glycerin, cocos nucifera (coconut) oil, hydrolyzed quinoa, panthenol, parfum (fragrance), phenoxyethanol, citric acid</p>',
    [
      'water (aqua, eau), cetearyl alcohol, behentrimonium methosulfate, glycerin, cocos nucifera (coconut) oil, hydrolyzed quinoa, panthenol, parfum (fragrance), phenoxyethanol, citric acid',
    ],
  ],
  [
    'sentence-case latin',
    '<h3>Ingredients</h3><p>Aqua, Helianthus annuus seed oil, Glycerin, Butyrospermum parkii butter, Cetyl alcohol, Hydrolyzed wheat protein, Parfum</p>',
    [
      'Aqua, Helianthus annuus seed oil, Glycerin, Butyrospermum parkii butter, Cetyl alcohol, Hydrolyzed wheat protein, Parfum',
    ],
  ],
  [
    'and before last',
    '<p>Ingredients: Water, Glycerin, Cetyl Alcohol, Behentrimonium Chloride, Panthenol, and Fragrance.</p>',
    ['Water, Glycerin, Cetyl Alcohol, Behentrimonium Chloride, Panthenol, and Fragrance.'],
  ],
  [
    'active/inactive same p',
    `<p>Active Ingredient: Pyrithione Zinc 1%. Inactive Ingredients: ${long}</p>`,
    [long],
  ],
  [
    'dandruff table',
    `<table><tr><td>Active ingredient</td><td>Purpose</td></tr><tr><td>Salicylic Acid 2%</td><td>Anti-dandruff</td></tr></table><h4>Inactive ingredients</h4><p>${long}</p>`,
    [long],
  ],
  [
    'single oil inline',
    '<p>Ingredients: Simmondsia Chinensis (Jojoba) Seed Oil.</p>',
    ['Simmondsia Chinensis (Jojoba) Seed Oil.'],
  ],
  [
    'single oil with percent',
    '<p>INCI: 100% Argania Spinosa Kernel Oil*</p><p>*organic</p>',
    ['100% Argania Spinosa Kernel Oil*'],
  ],
  [
    'dt div wrappers',
    `<dl><div><dt><span>Ingredients</span></dt><dd><span><p>${long}</p></span></dd></div><div><dt>Brand</dt><dd>Moss</dd></div></dl>`,
    [long],
  ],
  [
    'select language duplicates',
    `<div lang=en><h3>Ingredients</h3><p>${long}</p></div><div lang=fr><h3>Ingrédients</h3><p>${long}</p></div>`,
    [long],
  ],
  [
    'sorry link in list',
    '<h3>Ingredients</h3><p>Water (Aqua, Eau), Cetearyl Alcohol, Behentrimonium Methosulfate, <a href=#>Glycerin</a>, Cocos Nucifera (Coconut) Oil, Hydrolyzed Quinoa, <strong>Panthenol</strong>, Parfum (Fragrance), Phenoxyethanol, Citric Acid</p>',
    [long],
  ],
  [
    'names in spans with sup footnotes',
    '<h3>Ingredients</h3><p>Aqua, Glycerin<sup>1</sup>, Cetyl Alcohol, Linalool<sup>2</sup>, Limonene<sup>2</sup>, Panthenol, Parfum</p><p><sup>1</sup> Organic origin <sup>2</sup> From natural essential oils</p>',
    ['Aqua, Glycerin1, Cetyl Alcohol, Linalool2, Limonene2, Panthenol, Parfum'],
  ],
  [
    'li list with explanation after each',
    '<h3>Full ingredients</h3><ul><li><b>Aqua</b> – purified water used as base for all</li><li><b>Glycerin</b> – a humectant that holds water</li><li><b>Cetyl Alcohol</b> – softens the hair</li><li><b>Panthenol</b> – keeps the moisture</li></ul>',
    [],
  ],
  [
    'li list p in li',
    '<h3>Ingredients</h3><ul><li><p>Aqua</p></li><li><p>Glycerin</p></li><li><p>Cetyl Alcohol</p></li><li><p>Behentrimonium Chloride</p></li><li><p>Marula Secret</p></li><li><p>Panthenol</p></li><li><p>Parfum</p></li></ul>',
    ['Aqua Glycerin Cetyl Alcohol Behentrimonium Chloride Marula Secret Panthenol Parfum'],
  ],
  [
    'br one per line',
    '<p><b>Ingredients</b><br>Aqua<br>Glycerin<br>Cetyl Alcohol<br>Behentrimonium Chloride<br>Panthenol<br>Secret Moss<br>Parfum<br><br><b>Weight</b><br>200 g</p>',
    ['Aqua Glycerin Cetyl Alcohol Behentrimonium Chloride Panthenol Secret Moss Parfum'],
  ],
  [
    'table one name per row',
    '<h3>Ingredients</h3><table><tr><td>Aqua</td></tr><tr><td>Glycerin</td></tr><tr><td>Cetyl Alcohol</td></tr><tr><td>Behentrimonium Chloride</td></tr><tr><td>Panthenol</td></tr><tr><td>Citric Acid</td></tr><tr><td>Parfum</td></tr></table>',
    ['Aqua Glycerin Cetyl Alcohol Behentrimonium Chloride Panthenol Citric Acid Parfum'],
  ],
  [
    'div per name',
    '<div class=h>Ingredients</div><div class=grid><div class=i><div>Aqua</div></div><div class=i><div>Glycerin</div></div><div class=i><div>Cetyl Alcohol</div></div><div class=i><div>Behentrimonium Chloride</div></div><div class=i><div>Panthenol</div></div><div class=i><div>Citric Acid</div></div><div class=i><div>Parfum</div></div></div><div>Delivery</div>',
    ['Aqua Glycerin Cetyl Alcohol Behentrimonium Chloride Panthenol Citric Acid Parfum'],
  ],
  [
    'list with trailing legal in caps',
    `<p>INGREDIENTS: ${upper}. FOR EXTERNAL USE ONLY. KEEP OUT OF REACH OF CHILDREN.</p>`,
    [`${upper}.`],
  ],
  ['made in', `<p>INGREDIENTS: ${upper}. MADE IN MOSSLAND</p>`, [`${upper}.`]],
  ['fil code', `<p>INGREDIENTS: ${upper} (F.I.L. B123456/1)</p>`, [upper]],
  ['code number first', `<p>INGREDIENTS: 123456 V1 - ${upper}</p>`, [upper]],
  [
    'french legal',
    `<p>Ingrédients : ${upper}. La liste des ingrédients peut faire l'objet de modifications, veuillez consulter l'emballage.</p>`,
    [`${upper}.`],
  ],
  [
    'german',
    `<p><strong>Inhaltsstoffe:</strong> ${long}<br>* aus kontrolliert biologischem Anbau<br>** aus natürlichen ätherischen Ölen</p>`,
    [long],
  ],
  [
    'german allergy',
    `<p><strong>Inhaltsstoffe:</strong> ${long}</p><p>Bitte beachten Sie die Hinweise auf der Verpackung.</p>`,
    [long],
  ],
  [
    'spanish',
    `<h2>Ingredientes</h2><div>${long}. Sin parabenos, sin sulfatos, sin Mineral Oil.</div>`,
    [`${long}.`],
  ],
  ['polish', `<h2>Skład</h2><div>${long}</div><h2>Opinie</h2>`, [long]],
  ['turkish', `<b>İçindekiler:</b> ${long}`, [long]],
  [
    'arabic',
    '<div dir=rtl><h3>المكونات</h3><p>Aqua، Glycerin، Cetyl Alcohol، Panthenol، Parfum، Linalool، Citric Acid</p></div>',
    ['Aqua، Glycerin، Cetyl Alcohol، Panthenol، Parfum، Linalool، Citric Acid'],
  ],
  [
    'semicolon newline',
    `<h3>INCI</h3><pre>Aqua;
Glycerin;
Cetyl Alcohol;
Panthenol;
Parfum</pre>`,
    ['Aqua; Glycerin; Cetyl Alcohol; Panthenol; Parfum'],
  ],
  [
    'read more truncated only',
    '<h3>Ingredients</h3><p>Water, Cetyl Alcohol, Glycerin, Panthenol, Behentrimonium Chloride<span class=dots>...</span><span class=more style="display:none">, Parfum, Linalool, Citric Acid</span> <a>Read more</a></p>',
    ['Water, Cetyl Alcohol, Glycerin, Panthenol, Behentrimonium Chloride..., Parfum, Linalool, Citric Acid'],
  ],
  [
    'reviews after',
    `<h3>Ingredients</h3>${long}<h3>Reviews (12)</h3><p>I love panthenol, glycerin, and cetyl alcohol, dimethicone. 5 stars</p>`,
    [long],
  ],
  [
    'set of three dl',
    `<h2>Ingredients</h2><dl><dt>Shampoo</dt><dd>${long}</dd><dt>Mask</dt><dd>${upper}</dd></dl>`,
    [
      [long, 'Shampoo'],
      [upper, 'Mask'],
    ],
  ],
  [
    'set bold in p',
    `<h2>Ingredients</h2><p><b>Shampoo</b></p><p>${long}</p><p><b>Mask</b></p><p>${upper}</p>`,
    [
      [long, 'Shampoo'],
      [upper, 'Mask'],
    ],
  ],
  [
    'set colon in li',
    `<h2>Ingredients</h2><ul><li>Shampoo: ${long}</li><li>Mask: ${upper}</li></ul>`,
    [
      [long, 'Shampoo'],
      [upper, 'Mask'],
    ],
  ],
  [
    'set inline no br',
    `<p>Ingredients: Shampoo: ${long}. Mask: ${upper}.</p>`,
    [
      [`${long}.`, 'Shampoo'],
      [`${upper}.`, 'Mask'],
    ],
  ],
  [
    'drupal',
    `<div class="field field--name-field-inci"><div class="field__label">Ingredients</div><div class="field__item">${long}</div></div><div class="field"><div class="field__label">Volume</div><div class="field__item">200 ml</div></div>`,
    [long],
  ],
  [
    'form wraps page clobber',
    `<form><input name=parentNode><input name=localName><input name=nodeType><input name=firstChild><input name=getAttribute><h3>Ingredients</h3><p>${long}</p></form>`,
    [long],
  ],
  [
    'img named body',
    `<img name=body><img name=createTreeWalker><form name=documentElement></form><h3>Ingredients</h3><p>${long}</p>`,
    [long],
  ],
  ['whats inside', `<h3>What's Inside</h3><p>${long}</p>`, [long]],
  [
    'formulated w/o before list',
    `<h3>Formulated without</h3><p>Parabens, Sulfates, Mineral Oil, Dimethicone, Phthalates</p><h3>Ingredients</h3><p>${long}</p>`,
    [long],
  ],
  [
    'free-from sentence before list in same p',
    `<p>Free from parabens, sulfates, silicones and mineral oil. Ingredients: ${long}</p>`,
    [long],
  ],
  [
    'free-from line before unheaded',
    `<p>Free from parabens, sulfates and mineral oil.</p><p>${long}</p>`,
    [long],
  ],
  ['no heading, unknown lang label', `<p>Osagaiak: ${long}</p>`, [long]],
  ['ingredients paraben free heading', `<h3>Ingredients (paraben-free)</h3><p>${long}</p>`, [long]],
  [
    'shade may contain',
    '<p>Ingredients: Mica, Talc, Dimethicone, Zinc Stearate, Caprylyl Glycol, Ethylhexylglycerin. May Contain/Peut Contenir (+/-): Titanium Dioxide (CI 77891), Iron Oxides (CI 77491, CI 77492, CI 77499), Carmine (CI 75470).</p><p>Net wt 3g</p>',
    [
      'Mica, Talc, Dimethicone, Zinc Stearate, Caprylyl Glycol, Ethylhexylglycerin. May Contain/Peut Contenir (+/-): Titanium Dioxide (CI 77891), Iron Oxides (CI 77491, CI 77492, CI 77499), Carmine (CI 75470).',
    ],
  ],
  [
    'phase sub labels',
    '<h3>Ingredients</h3><p>Aqua, Glycerin, Cetyl Alcohol, Behentrimonium Chloride, Panthenol, Parfum, Linalool, Limonene</p><p>100% vegan</p>',
    ['Aqua, Glycerin, Cetyl Alcohol, Behentrimonium Chloride, Panthenol, Parfum, Linalool, Limonene'],
  ],
  [
    'amp and nested quotes',
    '<h3>Ingredients</h3><p>Water &amp; Aloe Juice, Sodium Lauroyl Methyl Isethionate, Glycerin, Cetyl Alcohol, C10-40 Isoalkyl Acid, "Natural" Fragrance, Panthenol</p>',
    [
      'Water & Aloe Juice, Sodium Lauroyl Methyl Isethionate, Glycerin, Cetyl Alcohol, C10-40 Isoalkyl Acid, "Natural" Fragrance, Panthenol',
    ],
  ],
  [
    'accordion +',
    `<button aria-expanded=false><span>Ingredients</span><span>+</span></button><div><div class=x>${long}</div></div><button><span>Delivery</span><span>+</span></button>`,
    [long],
  ],
  ['product-form metafield html', `<div class="metafield-rich_text_field"><p>${long}</p></div>`, [long]],
  [
    'with percent naturals tail',
    `<p>Ingredients: ${long}. 98% of the total ingredients are from natural origin.</p>`,
    [`${long}.`],
  ],
  [
    'with asterisks tail no dot',
    `<p>Ingredients: ${long} *Organically grown **Naturally derived</p>`,
    [long],
  ],
  ['ingredients are word', `<p>The ingredients are: ${long}.</p>`, [`${long}.`]],
  [
    'hair dye with drug names',
    '<h3>Ingredients</h3><p>Aqua, Cetearyl Alcohol, Ammonium Hydroxide, Toluene-2,5-Diamine, Resorcinol, m-Aminophenol, 2,4-Diaminophenoxyethanol HCl, Sodium Sulfite, Ascorbic Acid, EDTA</p>',
    [
      'Aqua, Cetearyl Alcohol, Ammonium Hydroxide, Toluene-2,5-Diamine, Resorcinol, m-Aminophenol, 2,4-Diaminophenoxyethanol HCl, Sodium Sulfite, Ascorbic Acid, EDTA',
    ],
  ],
  [
    'toothpaste',
    '<h3>Ingredients</h3><p>Sorbitol, Aqua, Hydrated Silica, Sodium Lauryl Sulfate, Aroma, Cellulose Gum, Sodium Fluoride, Sodium Saccharin, CI 77891</p>',
    [
      'Sorbitol, Aqua, Hydrated Silica, Sodium Lauryl Sulfate, Aroma, Cellulose Gum, Sodium Fluoride, Sodium Saccharin, CI 77891',
    ],
  ],
  [
    'lip balm natural',
    '<h3>Ingredients</h3><p>Ricinus Communis Seed Oil*, Cera Alba*, Butyrospermum Parkii Butter*, Tocopherol, Aroma</p>',
    ['Ricinus Communis Seed Oil*, Cera Alba*, Butyrospermum Parkii Butter*, Tocopherol, Aroma'],
  ],
  [
    'bath salt',
    '<h3>Ingredients</h3><p>Sodium Chloride, Magnesium Sulfate, Lavandula Angustifolia Oil, Linalool, Limonene</p>',
    ['Sodium Chloride, Magnesium Sulfate, Lavandula Angustifolia Oil, Linalool, Limonene'],
  ],
  [
    'perfume',
    '<h3>Ingredients</h3><p>Alcohol Denat., Parfum (Fragrance), Aqua (Water), Limonene, Linalool, Citral, Coumarin</p>',
    ['Alcohol Denat., Parfum (Fragrance), Aqua (Water), Limonene, Linalool, Citral, Coumarin'],
  ],
  [
    'short shampoo bar',
    '<h3>Ingredients</h3><p>Sodium Cocoyl Isethionate, Cetyl Alcohol, Parfum</p>',
    ['Sodium Cocoyl Isethionate, Cetyl Alcohol, Parfum'],
  ],
  [
    'ingredients: label row with colon in span',
    `<li><span class="bold">Ingredients : </span> <span>${long}</span></li><li><span class="bold">Item weight : </span><span>250 g</span></li>`,
    [long],
  ],
  [
    'important information',
    `<div id=imp><h2>Important information</h2><div><h4>Safety Information</h4><p>Avoid eyes</p></div><div><h4>Ingredients</h4><p></p><p>${long}</p></div><div><h4>Directions</h4><p>Apply</p></div></div>`,
    [long],
  ],
  [
    'nutrition-like tabs',
    `<div class=tabs><div>Description</div><div>Ingredients</div><div>How to use</div></div><div class=panels><div>Nice cream.</div><div>${long}</div><div>Apply daily to hair.</div></div>`,
    [long],
  ],
  [
    'heading repeated in tab and panel',
    `<div class=tabs><a>Details</a><a>Ingredients</a></div><div><h3>Ingredients</h3><p>${long}</p></div>`,
    [long],
  ],
  [
    'list wrapped in double divs with spans per word',
    '<h3>Ingredients</h3><p><span>Aqua,</span> <span>Glycerin,</span> <span>Cetyl</span> <span>Alcohol,</span> <span>Stearic</span> <span>Acid,</span> <span>Carbomer,</span> <span>Parfum</span></p>',
    [short],
  ],
  [
    'bullets in text nodes',
    '<h3>Ingredients</h3><p>• Aqua<br>• Glycerin<br>• Cetyl Alcohol<br>• Stearic Acid<br>• Carbomer<br>• Parfum</p>',
    ['Aqua • Glycerin • Cetyl Alcohol • Stearic Acid • Carbomer • Parfum'],
  ],
  [
    'hyphen bullets br',
    '<p><b>Ingredients</b><br>- Aqua<br>- Glycerin<br>- Cetyl Alcohol<br>- Stearic Acid<br>- Carbomer<br>- Parfum</p>',
    ['Aqua - Glycerin - Cetyl Alcohol - Stearic Acid - Carbomer - Parfum'],
  ],
  ['trailing comma dot', `<p>Ingredients: ${short},.</p>`, [short]],
  ['colon in next element', `<p><strong>Ingredients</strong>: ${long}</p>`, [long]],
  [
    'heading in caps glued',
    '<p>INGREDIENTS:AQUA,GLYCERIN,CETYL ALCOHOL,PANTHENOL,PARFUM,LIMONENE,CITRIC ACID</p>',
    ['AQUA,GLYCERIN,CETYL ALCOHOL,PANTHENOL,PARFUM,LIMONENE,CITRIC ACID'],
  ],
  ['Ingredients with count', `<h3>Ingredients (24)</h3><p>${long}</p>`, [long]],
  [
    'ingredients accord w tooltip i',
    `<h3>Ingredients <button aria-label="info">i</button></h3><p>${long}</p>`,
    [long],
  ],
  [
    'h3 ingredients & then intro sentence with colon',
    `<h3>Ingredients</h3><p>Here is the full list, in descending order: ${long}</p>`,
    [long],
  ],
  [
    'INCI list in italic after marketing and CTA',
    `<div><p>Buy now and save.</p><i>${long}</i><p>Add to cart</p></div>`,
    [long],
  ],
  [
    'French',
    `<h3>Composition</h3><p>Aqua (Water), Glycerin, Coco-Glucoside, Parfum (Fragrance), Limonene, Sodium Benzoate.<br/>*Ingrédients issus de l'agriculture biologique.<br/>99% du total est d'origine naturelle.</p>`,
    ['Aqua (Water), Glycerin, Coco-Glucoside, Parfum (Fragrance), Limonene, Sodium Benzoate.'],
  ],
  ['French2', `<p>Ingrédients (INCI) : ${long}. *issus de l’agriculture biologique.</p>`, [`${long}.`]],
  ['Italian', `<p><b>INCI:</b> ${long}. *da agricoltura biologica</p><p>Senza parabeni</p>`, [`${long}.`]],
  ['Danish', `<h4>Ingrediensliste</h4><p>${long}</p><h4>Anvendelse</h4>`, [long]],
  ['Finnish', `<h4>Ainesosat</h4><p>${long}</p>`, [long]],
  ['Hungarian', `<h4>Összetevők</h4><p>${long}</p><p>Kiszerelés: 200 ml</p>`, [long]],
  ['Greek', `<h4>Συστατικά</h4><p>${long}</p><p>Οδηγίες χρήσης: Απλώστε στα μαλλιά.</p>`, [long]],
  ['Hebrew', `<h4>רכיבים</h4><p>${long}</p>`, [long]],
  ['Thai', `<h4>ส่วนประกอบ</h4><p>${long}</p>`, [long]],
  ['Viet', `<p><b>Thành phần:</b> ${long}</p><p><b>Cách dùng:</b> thoa</p>`, [long]],
  ['Indonesian', `<p>Komposisi: ${long}. Cara pakai: oleskan pada rambut.</p>`, [`${long}.`]],
  [
    'Russian mixed',
    '<p><b>Состав:</b> Вода, Глицерин, Цетеариловый спирт, Пантенол, Экстракт ромашки, Феноксиэтанол, Отдушка.</p><p>Применение: нанесите на волосы.</p>',
    ['Вода, Глицерин, Цетеариловый спирт, Пантенол, Экстракт ромашки, Феноксиэтанол, Отдушка.'],
  ],
  [
    'korean w allergens after',
    '<dl><dt>전성분</dt><dd>정제수, 글리세린, 부틸렌글라이콜, 판테놀, 향료, 카보머, 토코페롤, 페녹시에탄올</dd><dt>주의사항</dt><dd>사용 시 주의</dd></dl>',
    ['정제수, 글리세린, 부틸렌글라이콜, 판테놀, 향료, 카보머, 토코페롤, 페녹시에탄올'],
  ],
  [
    'japanese dot sep',
    '<p>【成分】水・グリセリン・BG・ジメチコン・パンテノール・加水分解ケラチン・フェノキシエタノール・香料</p>',
    ['水・グリセリン・BG・ジメチコン・パンテノール・加水分解ケラチン・フェノキシエタノール・香料'],
  ],
  [
    'chinese tw',
    '<p>全成分：水、甘油、丁二醇、鯨蠟硬脂醇、苯氧乙醇、香精、泛醇、聚二甲基硅氧烷</p><p>使用方法：取適量</p>',
    ['水、甘油、丁二醇、鯨蠟硬脂醇、苯氧乙醇、香精、泛醇、聚二甲基硅氧烷'],
  ],
  [
    'two variants same list diff colourants',
    `<h3>Ingredients</h3><p><b>01 Sand:</b> ${short}, CI 77491</p><p><b>02 Bark:</b> ${short}, CI 77499</p>`,
    [
      [`${short}, CI 77491`, '01 Sand'],
      [`${short}, CI 77499`, '02 Bark'],
    ],
  ],
  [
    'shampoo + conditioner headings with word',
    `<h4>Shampoo Ingredients</h4><p>${long}</p><h4>Conditioner Ingredients</h4><p>${upper}</p>`,
    [
      [long, 'Shampoo'],
      [upper, 'Conditioner'],
    ],
  ],
  [
    'ingredients - name',
    `<p>Ingredients - Shampoo: ${long}</p><p>Ingredients - Mask: ${upper}</p>`,
    [
      [long, 'Shampoo'],
      [upper, 'Mask'],
    ],
  ],
  [
    'script templated',
    `<h3>Ingredients</h3><script>var a="${upper}"</script><template><p>${upper}</p></template><noscript>${upper}</noscript><p>${long}</p><textarea>${upper}</textarea>`,
    [long],
  ],
  [
    'html comment and wbr',
    '<h3>Ingredients</h3><p>Aqua, Glycerin, <!-- x -->Cetyl Al<wbr>cohol, Stearic Acid, Carbomer, Parfum</p>',
    [short],
  ],
  [
    'long names brackets commas',
    '<p>Ingredients: Aqua, Olus Oil (Vegetable Oil, Huile Végétale), Parfum (Fragrance: Linalool, Limonene), Glycerin, Iron Oxides (CI 77491, CI 77492), Panthenol</p>',
    [
      'Aqua, Olus Oil (Vegetable Oil, Huile Végétale), Parfum (Fragrance: Linalool, Limonene), Glycerin, Iron Oxides (CI 77491, CI 77492), Panthenol',
    ],
  ],
  [
    'vegan note after same cell',
    `<table><tr><td><b>Ingredients</b></td><td>${long}<br><br>Vegan. Gluten free. Made without nuts.</td></tr></table>`,
    [long],
  ],
  [
    'store info after br',
    `<p><b>Ingredients</b><br>${long}<br>Shelf life: 12 months<br>Country: Mossland</p>`,
    [long],
  ],
  [
    'list then marketing without stop words',
    `<p><b>Ingredients</b><br>${long}<br>Gentle daily moisture<br>Dermatologically tested</p>`,
    [long],
  ],
  [
    'allergen sentence with names',
    `<p>Ingredients: ${short}. Allergens: Linalool, Limonene, Citral.</p>`,
    [`${short}.`],
  ],
  [
    'from essential oils sentence with names',
    `<p>Ingredients: ${short}. *From essential oils: Linalool, Limonene, Citral.</p>`,
    [`${short}.`],
  ],
  ['active %+', `<h3>Ingredients</h3><p>Actives: Panthenol 2%, Niacinamide 5%</p><p>${long}</p>`, [long]],
  [
    'silent: vegan protein bar',
    '<p>Ingredients: Dates, Almonds, Pea Protein, Cocoa Butter, Sunflower Lecithin, Natural Flavors, Sea Salt, Glycerin, Tocopherols</p>',
    [],
  ],
  [
    'silent: gum',
    '<p>Ingredients: Sorbitol, Gum Base, Xylitol, Glycerin, Natural and Artificial Flavors, Mannitol, Soy Lecithin, Acesulfame K, Aspartame, BHT, Titanium Dioxide, Carnauba Wax, Sodium Stearate</p>',
    [],
  ],
  [
    'silent: wafer',
    '<p>INGREDIENTS: ENRICHED FLOUR (WHEAT FLOUR, NIACIN, REDUCED IRON, THIAMINE MONONITRATE, RIBOFLAVIN, FOLIC ACID), SUGAR, PALM OIL, MONO- AND DIGLYCERIDES, SODIUM STEAROYL LACTYLATE, POLYSORBATE 60, PROPYLENE GLYCOL MONOESTERS, SORBITAN MONOSTEARATE, CETYL?, XANTHAN GUM</p>',
    [],
  ],
  [
    'silent: whipped topping',
    '<p>Ingredients: Water, Corn Syrup, Hydrogenated Vegetable Oil, High Fructose Corn Syrup, Sodium Caseinate, Natural and Artificial Flavor, Xanthan Gum, Guar Gum, Polysorbate 60, Polysorbate 65, Sorbitan Monostearate, Sodium Hydroxide, Beta Carotene</p>',
    [],
  ],
  [
    'silent: cream pharmacy tablets',
    '<h4>Inactive ingredients</h4><p>hydroxypropyl methylcellulose, hypromellose, magnesium stearate, polyethylene glycol, polysorbate 80, titanium dioxide, sodium lauryl sulfate, propylparaben, methylparaben, stearic acid</p>',
    [],
  ],
  [
    'silent: supplement beauty',
    '<p>Ingredients: Hydrolyzed Marine Collagen, Hyaluronic Acid, Vitamin C, Biotin, Zinc Citrate, Coenzyme Q10, Ceramides, Silica, Hydroxypropyl Methylcellulose, Magnesium Stearate</p>',
    [],
  ],
  [
    'silent: softgel',
    '<p>Other Ingredients: Soybean Oil, Gelatin, Glycerin, Water, Yellow Beeswax, Soy Lecithin, Caprylic/Capric Triglycerides, Titanium Dioxide</p>',
    [],
  ],
  [
    'silent: MCT',
    '<p>Ingredients: Caprylic Acid (C8), Capric Acid (C10) Triglycerides from Coconuts</p>',
    [],
  ],
  ['silent: candles', '<p>Materials: soy wax, cotton wick, essential oils, glass</p>', []],
  [
    'silent: blog ingredients you love',
    '<h2>Best ingredients for curly hair</h2><p>Look for: Shea Butter, Argan Oil, Panthenol, Glycerin, Behentrimonium Chloride, Hydrolyzed Keratin</p>',
    [],
  ],
  [
    'silent: bad list table',
    '<table><tr><th>Bad ingredients</th></tr><tr><td>Sodium Lauryl Sulfate</td></tr><tr><td>Sodium Laureth Sulfate</td></tr><tr><td>Dimethicone</td></tr><tr><td>Propylene Glycol</td></tr><tr><td>Methylparaben</td></tr><tr><td>Phenoxyethanol</td></tr><tr><td>Isopropyl Alcohol</td></tr></table>',
    [],
  ],
  [
    'silent: faq',
    '<h3>What ingredients do you avoid?</h3><p>Parabens, SLS, SLES, Phthalates, Mineral Oil, Petrolatum, PEGs, Propylene Glycol, Triclosan, Formaldehyde</p>',
    [],
  ],
  [
    'silent: nav tags',
    '<ul class=tags><li><a>Shea Butter</a></li><li><a>Argan Oil</a></li><li><a>Jojoba Oil</a></li><li><a>Panthenol</a></li><li><a>Castor Oil</a></li><li><a>Betaine</a></li><li><a>Hydrolyzed Silk</a></li></ul>',
    [],
  ],
  [
    'silent: raw materials category',
    '<h1>Raw materials</h1><div><div class=card><a><h3>Cetearyl Alcohol</h3></a><p>€ 4.50</p><button>Add to cart</button></div><div class=card><a><h3>Behentrimonium Methosulfate</h3></a><p>€ 4.50</p><button>Add to cart</button></div><div class=card><a><h3>Sodium Cocoyl Isethionate</h3></a><p>€ 4.50</p><button>Add to cart</button></div><div class=card><a><h3>Coco Glucoside</h3></a><p>€ 4.50</p><button>Add to cart</button></div><div class=card><a><h3>Decyl Glucoside</h3></a><p>€ 4.50</p><button>Add to cart</button></div><div class=card><a><h3>Hydrolyzed Silk</h3></a><p>€ 4.50</p><button>Add to cart</button></div><div class=card><a><h3>Panthenol</h3></a><p>€ 4.50</p><button>Add to cart</button></div><div class=card><a><h3>Xanthan Gum</h3></a><p>€ 4.50</p><button>Add to cart</button></div><div class=card><a><h3>Propanediol</h3></a><p>€ 4.50</p><button>Add to cart</button></div></div>',
    [],
  ],
  [
    'silent: raw materials nav',
    '<ul><li><a href=/x>Emulsifying Wax</a></li><li><a href=/x>Cetearyl Alcohol</a></li><li><a href=/x>Behentrimonium Methosulfate</a></li><li><a href=/x>Sodium Cocoyl Isethionate</a></li><li><a href=/x>Coco Glucoside</a></li><li><a href=/x>Decyl Glucoside</a></li><li><a href=/x>Hydrolyzed Silk</a></li><li><a href=/x>Panthenol</a></li><li><a href=/x>Xanthan Gum</a></li><li><a href=/x>Propanediol</a></li></ul>',
    [],
  ],
  [
    'silent: news article',
    '<article><p>The study looked at phenoxyethanol, methylparaben, propylparaben, benzyl alcohol, sodium benzoate, potassium sorbate and ethylhexylglycerin in 50 creams.</p></article>',
    [],
  ],
  [
    'silent: inci definitions',
    '<h2>Ingredients</h2><h3>Panthenol</h3><p>Provitamin, draws water.</p><h3>Glycerin</h3><p>Humectant.</p><h3>Cetyl Alcohol</h3><p>Fatty alcohol.</p>',
    [],
  ],
  [
    'silent: filter with counts comma',
    '<p>Ingredients: Argan Oil (12), Shea Butter (9), Panthenol (4), Betaine (3), Hydrolyzed Keratin (2)</p>',
    [],
  ],
  [
    'silent: diy recipe w amounts',
    '<h3>Ingredients</h3><ul><li>60 g Sodium Cocoyl Isethionate</li><li>10 g Cetyl Alcohol</li><li>10 g Shea butter</li><li>2 g Panthenol</li><li>1 g Preservative</li><li>10 drops essential oil</li></ul><h3>Method</h3><p>Melt the oils.</p>',
    [],
  ],
  [
    'silent: paint',
    '<p>Composition: acrylic polymer, titanium dioxide, propylene glycol, water, ammonium hydroxide</p>',
    [],
  ],
  ['silent: textile', '<p>Composition: 70% Viscose, 25% Polyester, 5% Elastane</p>', []],
  ['silent: e-liquid', '<p>Ingredients: Propylene Glycol, Vegetable Glycerin, Flavouring, Nicotine</p>', []],
  [
    'silent: cough syrup',
    '<p>Inactive ingredients: anhydrous citric acid, edetate disodium, FD&C blue no. 1, flavors, glycerin, propylene glycol, propyl gallate, purified water, sodium benzoate, sodium citrate, sorbitol, sucralose, xanthan gum, benzyl alcohol</p>',
    [],
  ],
  [
    'silent: eye drops',
    '<p>Inactive ingredients: benzalkonium chloride, boric acid, edetate disodium, purified water, sodium borate, sodium chloride</p>',
    [],
  ],
  [
    'silent: vitamins gummy',
    '<p>Other ingredients: Glucose Syrup, Sugar, Pectin, Citric Acid, Natural Flavor, Coconut Oil, Carnauba Wax, Sodium Citrate, Vitamin E (as dl-alpha tocopheryl acetate), Biotin</p>',
    [],
  ],
  [
    'silent: ingredients conversation',
    '<p>We choose ingredients with care: coconut oil, shea butter, argan oil, jojoba oil, castor oil, marula oil and tea tree essential oil are all bought directly.</p>',
    [],
  ],
  ['uppercase legal', `<p>INGREDIENTS: ${upper}. PLEASE CHECK THE LABEL BEFORE USE</p>`, [`${upper}.`]],
  ['upper tail no stop', `<p>INGREDIENTS: ${upper} THIS LIST MAY CHANGE</p>`, [upper]],
  ['upper warn', `<p>INGREDIENTS: ${upper}. WARNINGS: AVOID EYES</p>`, [`${upper}.`]],
  ['upper no sep french', `<p>INGREDIENTS: ${upper}. EVITER LE CONTACT AVEC LES YEUX.</p>`, [`${upper}.`]],
  ['dutch tail', `<p>Ingrediënten: ${long}. Buiten bereik van kinderen houden.</p>`, [`${long}.`]],
  ['german tail2', `<p>Inhaltsstoffe: ${long}. Nur zur äußerlichen Anwendung.</p>`, [`${long}.`]],
  ['ital tail', `<p>Ingredienti: ${long}. Conservare in luogo fresco e asciutto.</p>`, [`${long}.`]],
  ['es tail', `<p>Ingredientes: ${long}. Mantener fuera del alcance de los niños.</p>`, [`${long}.`]],
  ['pl tail', `<p>Składniki: ${long}. Przechowywać w suchym miejscu.</p>`, [`${long}.`]],
  ['cz tail', `<p>Složení: ${long}. Uchovávejte mimo dosah dětí.</p>`, [`${long}.`]],
  ['ru tail', `<p>Состав: ${long}. Хранить в недоступном месте.</p>`, [`${long}.`]],
  ['tr tail', `<p>İçindekiler: ${long}. Çocuklardan uzak tutunuz.</p>`, [`${long}.`]],
  ['short tail 2 words', `<p>Ingredients: ${long}. Dermatologically tested. Vegan.</p>`, [`${long}.`]],
  ['two-word tails', `<p>Ingredients: ${long}. Sulfate free. Silicone free. Paraben free.</p>`, [`${long}.`]],
  ['tail 100%', `<p>Ingredients: ${long}. 100% vegan.</p>`, [`${long}.`]],
  ['tail natural origin', `<p>Ingredients: ${long}. 97% natural origin ingredients.</p>`, [`${long}.`]],
  ['tail cosmos', `<p>Ingredients: ${long}. COSMOS ORGANIC certified by an invented body.</p>`, [`${long}.`]],
  ['star note uppercase', `<p>Ingredients: ${long}. *ORGANICALLY GROWN</p>`, [`${long}.`]],
  ['star note parentheses', `<p>Ingredients: ${long} (*organic)</p>`, [long]],
  ['br star', `<p>Ingredients: ${long}<br>*Organic<br>**Natural fragrance</p>`, [long]],
  ['ul list w p', `<div><p>Ingredients</p><ul><li>${long}</li></ul></div>`, [long]],
  [
    'ol',
    '<h4>Ingredients</h4><ol><li>Aqua</li><li>Glycerin</li><li>Cetyl Alcohol</li><li>Panthenol</li><li>Parfum</li><li>Linalool</li></ol>',
    ['Aqua Glycerin Cetyl Alcohol Panthenol Parfum Linalool'],
  ],
  [
    'li with commas',
    '<h4>Ingredients</h4><ul><li>Aqua,</li><li>Glycerin,</li><li>Cetyl Alcohol,</li><li>Panthenol,</li><li>Parfum</li></ul>',
    ['Aqua, Glycerin, Cetyl Alcohol, Panthenol, Parfum'],
  ],
  [
    'nested accordion',
    `<details><summary>Product details</summary><div><h4>Benefits</h4><ul><li>Soft</li></ul><h4>Ingredients</h4><p>${long}</p><h4>Size</h4><p>8 oz</p></div></details>`,
    [long],
  ],
  ['aria hidden dup', `<div aria-hidden=true>${long}</div><div>${long}</div>`, [long]],
  [
    'truncated data',
    `<p class=short>Ingredients: Water (Aqua, Eau), Cetearyl Alcohol, Behentrimonium Methosulfate, Glycerin, Cocos Nuc...</p><p class=full>Ingredients: ${long}</p>`,
    [long],
  ],
  [
    'inline bold names',
    '<p><b>Ingredients:</b> <b>Water</b> (Aqua, Eau), <b>Cetearyl Alcohol</b>, Behentrimonium Methosulfate, <u>Glycerin</u>, Panthenol, Parfum</p>',
    ['Water (Aqua, Eau), Cetearyl Alcohol, Behentrimonium Methosulfate, Glycerin, Panthenol, Parfum'],
  ],
  ['no space after heading in strong', `<p><strong>Ingredients</strong>${long}</p>`, [long]],
  ['heading+br in strong', `<p><strong>Ingredients<br></strong>${long}</p>`, [long]],
  ['span heading same line no colon', `<div><span>Ingredients</span> <span>${long}</span></div>`, [long]],
  [
    'heading in summary svg',
    `<details><summary><svg><title>Plus</title><path/></svg>Ingredients</summary>${long}</details>`,
    [long],
  ],
  ['h2 ingredients & link', `<h2>Ingredients <a href=#>(view glossary)</a></h2><p>${long}</p>`, [long]],
  ['hashtag list', '<p>#curlyhair #panthenol #glycerin</p>', []],
  [
    'cocktail',
    '<h3>Ingredients</h3><ul><li>Water</li><li>Lemon Juice</li><li>Honey</li><li>Rose Water</li><li>Aloe Vera Juice</li><li>Citric Acid</li></ul>',
    [],
  ],
  [
    'essential oils category',
    '<h1>Essential oils</h1><ul><li>Lavender essential oil</li><li>Tea tree essential oil</li><li>Rosemary essential oil</li><li>Argan oil</li><li>Jojoba oil</li><li>Castor oil</li><li>Shea butter</li></ul>',
    [],
  ],
  ['variant select', '<select><option>Aqua</option><option>Glycerin</option></select><p>Choose</p>', []],
  [
    'ingredient spotlight',
    '<h2>Ingredient spotlight</h2><p>Panthenol, Hydrolyzed Keratin, Behentrimonium Chloride, Cetyl Alcohol</p>',
    [],
  ],
  [
    'made with',
    '<p>Made with Panthenol, Hydrolyzed Keratin, Argan Oil, Cetyl Alcohol, Behentrimonium Chloride, Glycerin, Squalane.</p>',
    [],
  ],
  [
    'chem supplier',
    '<table><tr><th>INCI</th><td>Cetearyl Alcohol</td></tr><tr><th>CAS</th><td>67762-27-0</td></tr></table>',
    [],
  ],
  [
    'INCI blend supplier',
    '<p>INCI: Cetearyl Alcohol (and) Polysorbate 60 (and) PEG-150 Stearate (and) Steareth-20</p>',
    [],
  ],
  [
    'ice cream',
    '<p>Ingredients: Milk, Cream, Sugar, Corn Syrup, Cocoa, Mono and Diglycerides, Guar Gum, Polysorbate 80, Carrageenan, Cellulose Gum, Annatto</p>',
    [],
  ],
  [
    'margarine',
    '<p>Ingredients: Vegetable Oils (Palm, Sunflower), Water, Salt, Emulsifiers (Mono- and Diglycerides of Fatty Acids, Polyglycerol Polyricinoleate), Potassium Sorbate, Citric Acid, Vitamin A Palmitate, Beta Carotene</p>',
    [],
  ],
  [
    'toothpaste drug us',
    '<p>Active: Sodium Fluoride 0.24%. Inactive ingredients: sorbitol, water, hydrated silica, glycerin, sodium lauryl sulfate, flavor, cellulose gum, sodium saccharin, titanium dioxide, PEG-6, cocamidopropyl betaine</p>',
    [
      'sorbitol, water, hydrated silica, glycerin, sodium lauryl sulfate, flavor, cellulose gum, sodium saccharin, titanium dioxide, PEG-6, cocamidopropyl betaine',
    ],
  ],
  [
    'dog food treats',
    '<p>Ingredients: Chicken, Vegetable Glycerin, Tapioca Starch, Natural Smoke Flavor, Citric Acid, Mixed Tocopherols, Rosemary Extract, Coconut Oil, Dried Aspergillus Fermentation Extract</p>',
    [],
  ],
  [
    'art groups',
    '<article><h2>Ingredients in your shampoo</h2><p><b>Sulfates:</b> Sodium Lauryl Sulfate, Sodium Laureth Sulfate, Ammonium Lauryl Sulfate, Sodium Coco Sulfate, Sodium Myreth Sulfate, TEA Lauryl Sulfate, Sodium Xylenesulfonate</p><p><b>Silicones:</b> Dimethicone, Cyclomethicone, Amodimethicone, Dimethiconol, Phenyl Trimethicone, Cyclopentasiloxane, Trimethylsiloxysilicate</p><p>Common preservatives: phenoxyethanol, benzyl alcohol, sodium benzoate, potassium sorbate, sorbic acid, dehydroacetic acid, caprylyl glycol</p></article>',
    [],
  ],
  [
    'art look for',
    '<article><p>Ingredients to look for: Glycerin, Aloe Vera, Panthenol, Honey, Propanediol, Hydrolyzed Wheat Protein, Cetyl Alcohol, Behentrimonium Chloride</p><p>Moisturizing ingredients: Glycerin, Panthenol, Sorbitol, Propylene Glycol, Sodium PCA, Betaine, Butylene Glycol</p></article>',
    [],
  ],
  [
    'art headings',
    '<article><h2>The best ingredients for dry hair</h2><ul><li>Glycerin</li><li>Panthenol</li><li>Shea Butter</li><li>Cetyl Alcohol</li><li>Argan Oil</li><li>Hydrolyzed Keratin</li><li>Squalane</li></ul></article>',
    [],
  ],
  [
    'art h3 ingredients in this article',
    '<article><h3>Ingredients mentioned</h3><p>Cetyl alcohol, cetearyl alcohol, stearyl alcohol, behenyl alcohol, lauryl alcohol, isopropyl alcohol and benzyl alcohol.</p></article>',
    [],
  ],
  [
    'tags',
    '<p>Tags: argan oil, shea butter, jojoba oil, coconut oil, castor oil, essential oils, rosehip oil, marula oil</p>',
    [],
  ],
  ['shampoo ingredients before', `<h3>Shampoo Ingredients:</h3><p>${long}</p>`, [long]],
  ['liste complete', `<h3>Liste complète des ingrédients</h3><p>${long}</p>`, [long]],
  ['lista skladnikow', `<p>Lista składników: ${long}</p>`, [long]],
  [
    'elenco',
    '<p>Elenco completo degli ingredienti: Aqua, Glycerin, Parfum, Coco-Glucoside</p>',
    ['Aqua, Glycerin, Parfum, Coco-Glucoside'],
  ],
  [
    'vollst',
    '<h4>Vollständige Inhaltsstoffe</h4><p>Aqua, Glycerin, Parfum, Coco-Glucoside</p>',
    ['Aqua, Glycerin, Parfum, Coco-Glucoside'],
  ],
  [
    'dr pill',
    '<p>Inactive ingredients: methacrylic acid copolymer, triethyl citrate, talc, polysorbate 80, sodium hydroxide, hypromellose, mannitol, magnesium stearate, glyceryl monostearate, sugar spheres, titanium dioxide, iron oxide</p>',
    [],
  ],
  [
    'organic latin',
    '<h3>Ingredients</h3><p>Aqua, Organic Aloe barbadensis leaf juice, Organic Cocos nucifera oil, Cetyl alcohol, Glyceryl stearate, Parfum</p>',
    [
      'Aqua, Organic Aloe barbadensis leaf juice, Organic Cocos nucifera oil, Cetyl alcohol, Glyceryl stearate, Parfum',
    ],
  ],
  [
    'fragrance colon inside',
    '<h3>Ingredients</h3><p>Aqua, Glycerin, Cetyl Alcohol, Parfum: Linalool, Limonene, Behentrimonium Chloride, Panthenol</p>',
    ['Aqua, Glycerin, Cetyl Alcohol, Parfum: Linalool, Limonene, Behentrimonium Chloride, Panthenol'],
  ],
  [
    'talc stop',
    '<h3>Ingredients</h3><p>Talc. Mica. Dimethicone. Zinc Stearate. Phenoxyethanol. Parfum.</p>',
    ['Talc. Mica. Dimethicone. Zinc Stearate. Phenoxyethanol. Parfum.'],
  ],
  [
    'vegan collagen',
    '<h3>Ingredients</h3><p>Aqua, Vegan Collagen, Glycerin, Cetyl Alcohol, Parfum, Panthenol</p>',
    ['Aqua, Vegan Collagen, Glycerin, Cetyl Alcohol, Parfum, Panthenol'],
  ],
  [
    'four plain names of a small maker',
    '<h3>Ingredients</h3><p>Argan Oil, Keratin, Shea Butter, Coconut Oil</p>',
    ['Argan Oil, Keratin, Shea Butter, Coconut Oil'],
  ],
  [
    'function table',
    '<h3>Ingredients</h3><table><tr><td>Aqua</td><td>Solvent</td></tr><tr><td>Glycerin</td><td>Humectant</td></tr><tr><td>Cetyl Alcohol</td><td>Emollient</td></tr><tr><td>Panthenol</td><td>Conditioning</td></tr><tr><td>Parfum</td><td>Scent</td></tr><tr><td>Linalool</td><td>Scent</td></tr></table>',
    ['Aqua\nGlycerin\nCetyl Alcohol\nPanthenol\nParfum\nLinalool'],
  ],
  [
    'custom el blocks',
    `<product-tabs><product-tab slot=a><span slot=title>Ingredients</span><div slot=content>${long}</div></product-tab></product-tabs>`,
    [long],
  ],
  [
    'unheaded ul paragraphs w/o water long',
    '<p>Behentrimonium Methosulfate, Cetyl Alcohol, Cetearyl Alcohol, Butyrospermum Parkii Butter, Glycerin, Panthenol, Hydrolyzed Silk, Squalane, Tocopherol, Parfum, Linalool, Limonene, Citral, Phenoxyethanol, Ethylhexylglycerin, Citric Acid</p>',
    [
      'Behentrimonium Methosulfate, Cetyl Alcohol, Cetearyl Alcohol, Butyrospermum Parkii Butter, Glycerin, Panthenol, Hydrolyzed Silk, Squalane, Tocopherol, Parfum, Linalool, Limonene, Citral, Phenoxyethanol, Ethylhexylglycerin, Citric Acid',
    ],
  ],
  [
    'safety datasheet words',
    '<h2>Composition</h2><p>Sodium hypochlorite, sodium hydroxide, sodium chloride, water, lauramine oxide</p>',
    [],
  ],
  [
    'ingredient with dash desc',
    '<h3>Ingredients</h3><p>Water – base<br>Glycerin – humectant<br>Cetyl Alcohol – emollient<br>Panthenol – vitamin<br>Parfum – scent</p>',
    [],
  ],
  [
    'two cols br',
    '<p>INGREDIENTS:</p><p>Aqua (Water),<br>Cetyl Alcohol,<br>Glycerin,<br>Panthenol,<br>Parfum (Fragrance)</p>',
    ['Aqua (Water), Cetyl Alcohol, Glycerin, Panthenol, Parfum (Fragrance)'],
  ],
  [
    'heading then usage then list',
    '<h3>Ingredients</h3><h3>How to use</h3><p>Apply to wet hair.</p><p>Rinse.</p>',
    [],
  ],
  [
    'ingredients & caution same p',
    `<p>Ingredients: ${long} Caution: Keep out of eyes. Directions: Use daily.</p>`,
    [long],
  ],
  ['net', `<p>Net Wt. 8 oz. Ingredients: ${long}. Made in Mossland. UPC 123456</p>`, [`${long}.`]],
  [
    'html entities bullet',
    '<h3>Ingredients</h3><p>Aqua&nbsp;&bull;&nbsp;Glycerin&nbsp;&bull;&nbsp;Cetyl Alcohol&nbsp;&bull;&nbsp;Parfum&nbsp;&bull;&nbsp;Limonene</p>',
    ['Aqua • Glycerin • Cetyl Alcohol • Parfum • Limonene'],
  ],
  [
    'note with "paraben-free formula" before heading',
    `<p>Paraben-free formula. Ingredients: ${long}</p>`,
    [long],
  ],
  [
    'comma-less newline source',
    `<h3>Ingredients</h3><p>
      Aqua (Water),
      Glycerin,
      Cetyl Alcohol,
      Parfum (Fragrance),
      Limonene
   </p>`,
    ['Aqua (Water), Glycerin, Cetyl Alcohol, Parfum (Fragrance), Limonene'],
  ],
  [
    'drug topical label ok',
    `<p>Active ingredient: Zinc Oxide 20%</p><p>Inactive ingredients: ${long}</p>`,
    [long],
  ],
  ['cs', `<h3>Složení</h3><p>${long}</p><p>Objem: 200 ml</p>`, [long]],
  ['ro', `<p><strong>Ingrediente:</strong> ${long}</p><p>Mod de utilizare: aplicați.</p>`, [long]],
  ['pt', `<p><strong>Composição:</strong> ${long}</p>`, [long]],
  ['uk', `<p><strong>Склад:</strong> ${long}</p>`, [long]],
  ['sr', `<p><strong>Sastav:</strong> ${long}</p>`, [long]],
  ['lt', `<p><strong>Sudėtis:</strong> ${long}</p>`, [long]],
  ['et', `<p><strong>Koostisosad:</strong> ${long}</p>`, [long]],
  ['fa', `<p><strong>ترکیبات:</strong> ${long}</p>`, [long]],
  [
    'a table of names and what they do',
    `<h3>Ingredients</h3><table><tr><th>INCI</th><th>Function</th></tr>${[
      ['Aqua', 'Solvent'],
      ['Cetearyl Alcohol', 'Emollient'],
      ['Behentrimonium Chloride', 'Conditioning'],
      ['Parfum', 'Fragrance'],
      ['Panthenol', 'Humectant'],
      ['Phenoxyethanol', 'Preservative'],
    ]
      .map(([name, does]) => `<tr><td>${name}</td><td>${does}</td></tr>`)
      .join('')}</table><p>Made on the coast.</p>`,
    ['Aqua\nCetearyl Alcohol\nBehentrimonium Chloride\nParfum\nPanthenol\nPhenoxyethanol'],
  ],
  [
    'each name with what it does behind a dash',
    '<h3>Ingredients</h3><p><b>Aqua</b> – carries the rest</p><p><b>Cetearyl Alcohol</b> – softens</p><p><b>Behentrimonium Chloride</b> – gives slip</p><p><b>Glycerin</b> – keeps water in</p><p><b>Panthenol</b> – smooths</p><p><b>Parfum</b> – smells of figs</p>',
    ['Aqua\nCetearyl Alcohol\nBehentrimonium Chloride\nGlycerin\nPanthenol\nParfum'],
  ],
  [
    'names and functions as a definition list',
    '<h4>INCI</h4><dl><dt>Aqua</dt><dd>solvent</dd><dt>Cetearyl Alcohol</dt><dd>emollient</dd><dt>Behentrimonium Chloride</dt><dd>antistatic</dd><dt>Glycerin</dt><dd>humectant</dd><dt>Parfum</dt><dd>fragrance</dd><dt>Citric Acid</dt><dd>buffering</dd></dl>',
    ['Aqua\nCetearyl Alcohol\nBehentrimonium Chloride\nGlycerin\nParfum\nCitric Acid'],
  ],
  [
    'oils and what they do for the mood',
    '<h3>Ingredients</h3><p>Jasmine – calming</p><p>Neroli – lifting</p><p>Vetiver – grounding</p><p>Patchouli – warming</p><p>Rose – soothing</p><p>Lavender – calming</p><p>Frankincense – clearing</p>',
    [],
  ],
  [
    'a glossary that goes by the alphabet',
    '<h3>Ingredients</h3><dl><dt>Aqua</dt><dd>water</dd><dt>Behentrimonium Chloride</dt><dd>gives slip</dd><dt>Cetearyl Alcohol</dt><dd>softens</dd><dt>Dimethicone</dt><dd>covers</dd><dt>Glycerin</dt><dd>draws water</dd><dt>Panthenol</dt><dd>smooths</dd><dt>Tocopherol</dt><dd>keeps</dd></dl>',
    [],
  ],
  [
    'shortened, then in full',
    `<h3>Ingredients</h3><p>Water (Aqua, Eau), Cetearyl Alcohol, Behentrimonium Methosulfate… <a href=#>more</a></p><div hidden><p>${long}</p></div>`,
    [long],
  ],
  [
    'a bold label right behind the last name',
    `<p><b>Ingredients:</b> ${long} <b>Shipping &amp; returns:</b> We post on Mondays. <b>Care:</b> Keep it cool.</p>`,
    [long],
  ],
  ['a heading by the rule it follows', `<h4>Inhaltsstoffe laut INCI</h4><p>${short}</p>`, [short]],
  ['a heading that names no product', `<p>Složení výrobku: ${short}</p>`, [short]],
  [
    'plain names in Finnish',
    '<h3>Ainesosat</h3><p>Vesi, kookosöljy, sheavoi, glyseriini, mehiläisvaha, jojobaöljy, hajuste</p>',
    ['Vesi, kookosöljy, sheavoi, glyseriini, mehiläisvaha, jojobaöljy, hajuste'],
  ],
  [
    'plain names in Hungarian',
    '<h3>Összetevők</h3><p>Víz, kókuszolaj, sheavaj, glicerin, méhviasz, jojobaolaj, illatanyag</p>',
    ['Víz, kókuszolaj, sheavaj, glicerin, méhviasz, jojobaolaj, illatanyag'],
  ],
  [
    'plain names in Romanian',
    '<h3>Ingrediente</h3><p>Apă, ulei de cocos, unt de shea, glicerină, ceară de albine, ulei de jojoba, parfum</p>',
    ['Apă, ulei de cocos, unt de shea, glicerină, ceară de albine, ulei de jojoba, parfum'],
  ],
  [
    'double slashes between names',
    '<h5>Ingrediënten</h5><p>Aqua // Cetearyl Alcohol // Behentrimonium Chloride // Parfum // Linalool</p>',
    ['Aqua // Cetearyl Alcohol // Behentrimonium Chloride // Parfum // Linalool'],
  ],
  [
    'the others beside an active one, in Italian',
    '<p>Principio attivo: Piroctone Olamine 1 %</p><p>Altri ingredienti: Cetearyl Alcohol, Panthenol, Linalool, Limonene, Parfum, Citric Acid</p>',
    ['Cetearyl Alcohol, Panthenol, Linalool, Limonene, Parfum, Citric Acid'],
  ],
  [
    'a question, and the formula for an answer',
    '<h4>Wat zit er in dit product?</h4><p>Cetearyl Alcohol, Panthenol, Glycerin, Parfum, Citric Acid</p><h4>Bu ürünün içinde ne var?</h4><p>Dimethicone, Limonene, Coumarin, Citral, Sodium Chloride</p>',
    [
      'Cetearyl Alcohol, Panthenol, Glycerin, Parfum, Citric Acid',
      'Dimethicone, Limonene, Coumarin, Citral, Sodium Chloride',
    ],
  ],
  [
    'a bold question in the line of its answer',
    '<p><b>What’s in it</b> Water, Panthenol, Glycerin, Limonene, Citric Acid</p>',
    ['Water, Panthenol, Glycerin, Limonene, Citric Acid'],
  ],
  [
    'a remark on the ingredients behind the last one',
    '<p>Ingrediënten: Aqua, Cetearyl Alcohol, Parfum, Panthenol. Ingrediënten kunnen wijzigen; kijk op de verpakking.</p>',
    ['Aqua, Cetearyl Alcohol, Parfum, Panthenol.'],
  ],
  [
    'numbered lines, the last of them unknown',
    '<h4>INCI</h4><p>1) Aqua<br>2) Cetearyl Alcohol<br>3) Panthenol<br>4) Oblong Strand Filtrate</p>',
    ['1) Aqua 2) Cetearyl Alcohol 3) Panthenol 4) Oblong Strand Filtrate'],
  ],
  [
    'a set under bold names, the second list without water',
    `<h3>Ingredients</h3><p><strong>Wash</strong><br>${long}</p><p><strong>Styling Jelly</strong><br>Pullulan, Castor Oil, Sodium Hydroxide, PEG-8, Hyaluronic Acid</p>`,
    [
      [long, 'Wash'],
      ['Pullulan, Castor Oil, Sodium Hydroxide, PEG-8, Hyaluronic Acid', 'Styling Jelly'],
    ],
  ],
  [
    'allergens under a title of their own are an excerpt',
    '<h3>Ingredients</h3><p>Aqua, Cetearyl Alcohol, Parfum, Linalool, Limonene, Citral, Geraniol, Coumarin</p><p><strong>Scent</strong><br>Linalool, Limonene, Citral, Geraniol, Coumarin</p>',
    ['Aqua, Cetearyl Alcohol, Parfum, Linalool, Limonene, Citral, Geraniol, Coumarin'],
  ],
  [
    'the same heading over each list of a set, one without water',
    `<div>Skład Mgiełka:<br>Diisostearyl Malate, Sodium Hyaluronate, Pentylene Glycol, Lecithin, Sodium Hydroxide<br><br>Skład Szampon:<br>${long}</div>`,
    [
      ['Diisostearyl Malate, Sodium Hyaluronate, Pentylene Glycol, Lecithin, Sodium Hydroxide', 'Mgiełka'],
      [long, 'Szampon'],
    ],
  ],
  [
    'a card for each name, with its task',
    `<h2>Ingredients</h2><div>${['Aqua', 'Cetearyl Alcohol', 'Parfum', 'Panthenol', 'Citric Acid', 'Limonene']
      .map((name) => `<div><img alt="" src="i.svg"><div>${name}</div><div>Softener</div></div>`)
      .join('')}</div>`,
    ['Aqua\nCetearyl Alcohol\nParfum\nPanthenol\nCitric Acid\nLimonene'],
  ],
  [
    'cards of what a shop is proud of',
    `<h2>Ingredients</h2><div>${[
      'Argan Oil',
      'Shea Butter',
      'Jojoba Oil',
      'Panthenol',
      'Keratin',
      'Aloe Vera Gel',
    ]
      .map((name) => `<div><div>${name}</div><div>We press it ourselves.</div></div>`)
      .join('')}</div>`,
    [],
  ],
  [
    'a cloud of words that readers look for',
    `<h1>Kelp Shampoo</h1><div>${'Rice Water,Avocado Oil,Argan Oil,Shea Butter,Silk Protein,Keratin,Castor Oil,Panthenol'
      .split(',')
      .map((word) => `<a href="/t">${word}</a>`)
      .join(' ')}</div>`,
    [],
  ],
  [
    'a recipe to stir, in percent',
    '<h3>Ingredients</h3><ul><li>70 % water</li><li>8 % coconut oil</li><li>4 % cetyl alcohol</li><li>2 % BTMS</li><li>1 % lavender oil</li></ul>',
    [],
  ],
  [
    'a question that goes on with its answer',
    '<p>What goes into it Aqua (Water), Glycerin, Poloxamer 338, Ethylhexylglycerin</p><p>Hvad er der i?: Water, Panthenol, Parfum</p>',
    ['Aqua (Water), Glycerin, Poloxamer 338, Ethylhexylglycerin', 'Water, Panthenol, Parfum'],
  ],
  [
    'a table of names and tasks without water, of a product that tells nothing',
    `<h3>Componenti</h3><table>${[
      'Behentrimonium Chloride',
      'Disodium EDTA',
      'Glycerin',
      'Phenoxyethanol',
      'Coumarin',
      'Panthenol',
      'Limonene',
      'Parfum',
    ]
      .map((name) => `<tr><td>${name}</td><td>Solvente</td></tr>`)
      .join('')}</table>`,
    [
      'Behentrimonium Chloride\nDisodium EDTA\nGlycerin\nPhenoxyethanol\nCoumarin\nPanthenol\nLimonene\nParfum',
    ],
  ],
  [
    'buttons within the heading of a list',
    `<h3>Zutaten <div><button>1x</button><button>2x</button><button>3x</button></div></h3><ul>${items('Aqua', 'Betaine', 'Coumarin', 'Sodium PCA')}</ul>`,
    ['Aqua\nBetaine\nCoumarin\nSodium PCA'],
  ],
  [
    'the product’s name as a heading between the word and its list',
    `<h1>Fathom Hair Mask</h1><h2>Ingredientes</h2><h2>Fathom Hair Mask</h2><ul>${items('Aqua', 'Sodium Phytate', 'Alcohol', 'Tartaric Acid', 'Sodium Lactate')}</ul>`,
    ['Aqua\nSodium Phytate\nAlcohol\nTartaric Acid\nSodium Lactate'],
  ],
  [
    'other words as a heading between the word and what is no list of it',
    `<h1>Fathom Hair Mask</h1><h2>Ingredients</h2><h2>Goes well with</h2><ul>${items('Argan Oil', 'Shea Butter', 'Castor Oil', 'Aloe Vera Gel')}</ul>`,
    [],
  ],
  [
    'items within items',
    `<h2>Ingredients</h2><ul>${items('Aqua', 'Glycerin', 'Cetyl Alcohol')}<li><ul>${items('Coumarin')}</ul></li>${items('Panthenol', 'Lauryl Glucoside')}</ul>`,
    ['Aqua\nGlycerin\nCetyl Alcohol\nCoumarin\nPanthenol\nLauryl Glucoside'],
  ],
  [
    'each name deep within its item',
    `<h2>Ingredients</h2><ul>${['Aqua', 'Betaine', 'Coumarin', 'Sodium PCA', 'Panthenol']
      .map((name) => `<li><div><span><div>${name}</div></span></div></li>`)
      .join('')}</ul>`,
    ['Aqua\nBetaine\nCoumarin\nSodium PCA\nPanthenol'],
  ],
  [
    'the first name set apart',
    `<div><h2>Zutaten</h2><div><p>Purified Water</p><ol>${items('Phenoxyethanol', 'Behentrimonium Methosulfate', 'Citronellol', 'Glycerin')}</ol></div></div>`,
    ['Purified Water\nPhenoxyethanol\nBehentrimonium Methosulfate\nCitronellol\nGlycerin'],
  ],
  [
    'a name without the paragraph that others have',
    `<div>Ingredients</div><div><div><div><p>Aqua</p></div></div><div><div>Methyl Gluceth-20</div></div><div><div><p>Sodium Lactate</p></div></div><div><div><p>Polyquaternium-10</p></div></div></div>`,
    ['Aqua\nMethyl Gluceth-20\nSodium Lactate\nPolyquaternium-10'],
  ],
  [
    'boxes to tick, that are the list',
    `<h1>Fathom Curl Jelly</h1><h3>Ingredients</h3><ul>${ticked('Aqua', 'Glycerin', 'Cetyl Alcohol', 'Panthenol', 'Parfum')}</ul>`,
    ['Aqua\nGlycerin\nCetyl Alcohol\nPanthenol\nParfum'],
  ],
  [
    'boxes to tick, that are a filter',
    `<h1>Curl goods</h1><aside><h3>Ingredients</h3><ul>${ticked('Aqua', 'Argan Oil', 'Cetyl Alcohol', 'Panthenol', 'Amodimethicone')}</ul></aside>`,
    [],
  ],
  [
    'boxes to tick, of which none is water',
    `<h1>Curl goods</h1><h3>Ingredients</h3><ul>${ticked('Argan Oil', 'Cetyl Alcohol', 'Panthenol', 'Amodimethicone', 'Squalane')}</ul>`,
    [],
  ],
  [
    'scents to choose from, right before the list',
    `<h1>Fathom Hair Oil</h1><div><label><input type="radio"> Shea Butter</label><label><input type="radio"> Argan Oil</label><p>Squalane, Panthenol, Cetyl Alcohol, Phenoxyethanol, Parfum, Linalool</p><label><input type="checkbox"> Rose Oil</label></div>`,
    ['Squalane, Panthenol, Cetyl Alcohol, Phenoxyethanol, Parfum, Linalool'],
  ],
  [
    'cells beside each other, each with a list',
    `<table><tr><th>Ingredients</th><td>${short}</td><td>Glycerin, Panthenol, Betaine, Coumarin, Linalool</td></tr></table>`,
    [short, 'Glycerin, Panthenol, Betaine, Coumarin, Linalool'],
  ],
  [
    'a list for each scent, all but one hidden',
    `<h4>Ingredients</h4><select><option>Moss</option></select><div>${short}</div><div hidden>Panthenol, Glycerin, Betaine, Coumarin, Linalool, Citral</div>`,
    [short, 'Panthenol, Glycerin, Betaine, Coumarin, Linalool, Citral'],
  ],
  ['a batch before a dash', `<h4>Ingredients</h4><p>Batch 3412 – ${short}</p>`, [short]],
  ['a batch before a colon', `<h4>Ingredients</h4><p>LOT 24/118 +: ${short}</p>`, [short]],
  [
    'the product and its size before a colon',
    `<h1>Fathom Rinse</h1><p>Fathom Rinse (250 ml): ${short}</p>`,
    [short],
  ],
  ['a title of two things', `<h3>Ingredients | Nutrition</h3><p>${short}</p>`, [short]],
  [
    'a title of two things, turned',
    `<h3>How it feels &amp; Ingredients</h3><p>Aqua, Panthenol, Parfum</p>`,
    ['Aqua, Panthenol, Parfum'],
  ],
  [
    'a title of two things, the second in three words',
    '<h3>Ingredients + How It Works</h3><p>Aqua, Panthenol, Parfum</p>',
    ['Aqua, Panthenol, Parfum'],
  ],
  [
    'blanks that are printed as letters',
    '<h3>Composición</h3><p>Aqua,&amp;nbsp;Glycerin,&amp;nbsp;Cetearyl&amp;nbsp;Alcohol,&amp;nbsp;Panthenol,&amp;nbsp;Parfum</p>',
    ['Aqua,&nbsp;Glycerin,&nbsp;Cetearyl&nbsp;Alcohol,&nbsp;Panthenol,&nbsp;Parfum'],
  ],
  [
    'marks of another system, shown as letters',
    '<div>[tabs][tab title="About"]Soft hold for wavy hair.[/tab][tab title="Ingredients"]Aqua, Glycerin, Mica [nano], Cetyl Alcohol, Panthenol[/tab][tab title="How to use"]Smooth over damp lengths.[/tab][/tabs]</div>',
    ['Aqua, Glycerin, Mica [nano], Cetyl Alcohol, Panthenol'],
  ],
  [
    'marks of another system in a line',
    '<p>[b]Ingredients[/b] Aqua, Glycerin, Cetyl Alcohol, Panthenol [b]How to use[/b] Smooth over damp lengths.</p>',
    ['Aqua, Glycerin, Cetyl Alcohol, Panthenol'],
  ],
  [
    'breaks lost around the list',
    '<h1>Fathom Rinse</h1><p>Soft hold.IngredientsAqua, Glycerin, Cetyl Alcohol, Panthenol, ParfumHow to useSmooth over damp lengths.</p>',
    ['Aqua, Glycerin, Cetyl Alcohol, Panthenol, Parfum'],
  ],
  [
    'breaks lost between names',
    '<h1>Fathom Rinse</h1><p>IngredientsAqua (Water)GlycerinCetyl AlcoholBehentrimonium ChloridePanthenolParfum</p>',
    ['Aqua (Water)\nGlycerin\nCetyl Alcohol\nBehentrimonium Chloride\nPanthenol\nParfum'],
  ],
  [
    'a break lost before a label',
    '<p>Ingredients: Aqua, Glycerin, Cetyl Alcohol, Panthenol, ParfumDirections: Smooth over damp lengths.</p>',
    ['Aqua, Glycerin, Cetyl Alcohol, Panthenol, Parfum'],
  ],
  [
    'waves between names',
    '<h3>Ingredients</h3><p>Aqua ~ Glycerin ~ Cetyl Alcohol ~ Panthenol</p>',
    ['Aqua ~ Glycerin ~ Cetyl Alcohol ~ Panthenol'],
  ],
  [
    'footnotes in numbers',
    '<h3>Ingredients</h3><p>Aqua<sup>1</sup>, Glycerin<sup>2,3</sup>, Cetyl Alcohol, Panthenol<sup>2,3</sup>, Parfum</p>',
    ['Aqua1, Glycerin2,3, Cetyl Alcohol, Panthenol2,3, Parfum'],
  ],
  [
    'what others searched for',
    `<h4>Popular</h4><ul>${items(...['Aqua', 'Glycerin', 'Cetyl Alcohol', 'Panthenol', 'Phenoxyethanol', 'Dimethicone', 'Squalane'].map((name) => `<a href="/s">${name}</a>`))}</ul>`,
    [],
  ],
  [
    'the claims of a patent',
    '<h1>Composition for fibres</h1><p>1. A composition comprising at least one agent chosen from water, phenoxyethanol, dimethicone, cetyl alcohol, panthenol and mixtures thereof.</p>',
    [],
  ],
];
