import { type Talk, talks as west } from './talk.ts';

const cut = (rows: Record<keyof Talk, string>): Talk =>
  Object.fromEntries(Object.entries(rows).map(([key, text]) => [key, text.split('|')])) as Talk;

/** All sixteen languages. */
export const talks: Record<string, Talk> = {
  ...west,
  tr: cut({
    head: 'İçindekiler|İçerik|İçerikler|Bileşenler|INCI|Bileşim|İÇİNDEKİLER|Ürün içeriği',
    key: 'Öne çıkan içerikler|Aktif bileşenler',
    tabs: 'Açıklama|Ürün bilgisi|Kullanım|Nasıl kullanılır|Kargo|Teslimat|Yorumlar (9)|Değerlendirmeler',
    title: 'Kumsal Bukle Kremi 200 ml|Yosun Şampuan|Dalga Maskesi|Köpük Jel',
    say: 'Yorgun dalgalar için hafif bir krem.|Uçları yumuşatır.|Küçük partiler hâlinde üretilir.|Yağmur ve incir kokar.|Hassas saç derisine uygundur.|Şişesi geri dönüştürülmüş camdır.',
    use: 'Islak saça uygulayın ve kurumaya bırakın.|Masaj yapın, iki dakika bekletin, durulayın.',
    tail: 'İçerik değişebilir, ambalajı kontrol edin.|* organik tarımdan|Sadece haricen kullanılır.|Çocuklardan uzak tutun.',
    buy: 'Sepete ekle|Satın al',
    free: 'Sülfat, paraben ve silikon içermez.|Mineral yağ ve ftalat yoktur.',
    plain:
      'Su|Gliserin|Shea yağı|Hindistan cevizi yağı|Parfüm|Sitrik asit|Pantenol|Aloe vera suyu|Jojoba yağı|Keratin|Balmumu|Laktik asit|Ksantan gam|Deniz tuzu|Argan yağı|E vitamini|Bal|Hint yağı|Biberiye özü|Pirinç proteini',
  }),
  sv: cut({
    head: 'Ingredienser|Innehåll|INCI|Innehållsförteckning|Ingredienslista|Innehållsdeklaration|Ingredienser (INCI)|Vad innehåller den?',
    key: 'Nyckelingredienser|Aktiva ämnen i fokus',
    tabs: 'Beskrivning|Produktinfo|Användning|Så gör du|Frakt|Leverans|Omdömen (3)|Recensioner',
    title: 'Skärgård Lockcreme 200 ml|Bränning Schampo|Tångruska Inpackning|Dyning Gel',
    say: 'En lätt kräm för trötta vågor.|Gör längderna mjuka.|Tillverkas i små satser.|Doftar regn och fikon.|Passar känslig hårbotten.|Flaskan är av återvunnet glas.',
    use: 'Krama in i vått hår och låt torka.|Massera in, vänta två minuter, skölj.',
    tail: 'Innehållet kan ändras, se förpackningen.|* från ekologisk odling|Endast för utvärtes bruk.|Förvaras oåtkomligt för barn.',
    buy: 'Lägg i varukorgen|Köp',
    free: 'Utan sulfater, parabener och silikoner.|Fri från mineralolja och mikroplast.',
    plain:
      'Vatten|Glycerin|Sheasmör|Kokosolja|Parfym|Citronsyra|Pantenol|Aloe vera-juice|Jojobaolja|Keratin|Bivax|Mjölksyra|Xantangummi|Havssalt|Arganolja|Vitamin E|Honung|Ricinolja|Rosmarinextrakt|Risprotein',
  }),
  da: cut({
    head: 'Ingredienser|Indhold|INCI|Ingrediensliste|Indholdsstoffer|Indholdsfortegnelse|Ingredienser (INCI)|Hvad er der i?',
    key: 'Nøgleingredienser|Udvalgte aktive stoffer',
    tabs: 'Beskrivelse|Produktinfo|Anvendelse|Sådan bruger du den|Fragt|Levering|Anmeldelser (1)|Bedømmelser',
    title: 'Klitkant Krøllecreme 200 ml|Tangrand Shampoo|Havgus Maske|Flodbred Gelé',
    say: 'En let creme til trætte bølger.|Gør længderne bløde.|Fremstillet i små portioner.|Dufter af regn og figen.|Velegnet til følsom hovedbund.|Flasken er af genbrugsglas.',
    use: 'Krammes i vådt hår og lufttørres.|Masser ind, vent to minutter, skyl ud.',
    tail: 'Indholdet kan ændres, se emballagen.|* fra økologisk jordbrug|Kun til udvortes brug.|Opbevares utilgængeligt for børn.',
    buy: 'Læg i kurv|Køb',
    free: 'Uden sulfater, parabener og silikone.|Fri for mineralolie og mikroplast.',
    plain:
      'Vand|Glycerin|Sheasmør|Kokosolie|Parfume|Citronsyre|Panthenol|Aloe vera-saft|Jojobaolie|Keratin|Bivoks|Mælkesyre|Xanthangummi|Havsalt|Arganolie|E-vitamin|Honning|Ricinusolie|Rosmarinekstrakt|Risprotein',
  }),
  nb: cut({
    head: 'Ingredienser|Innhold|INCI|Ingrediensliste|Innholdsfortegnelse|Innholdsstoffer|Ingredienser (INCI)|Hva er i den?',
    key: 'Nøkkelingredienser|Aktive ingredienser',
    tabs: 'Beskrivelse|Produktinfo|Bruk|Slik bruker du den|Frakt|Levering|Omtaler (1)|Vurderinger',
    title: 'Svaberg Krøllkrem 200 ml|Tareskog Sjampo|Holme Hårmaske|Fjære Gelé',
    say: 'En lett krem for slitne bølger.|Gjør lengdene myke.|Laget i små partier.|Dufter av regn og fiken.|Egnet for sensitiv hodebunn.|Flasken er av resirkulert glass.',
    use: 'Klem inn i vått hår og la tørke.|Masser inn, vent to minutter, skyll.',
    tail: 'Innholdet kan endres, se emballasjen.|* fra økologisk landbruk|Kun til utvortes bruk.|Oppbevares utilgjengelig for barn.',
    buy: 'Legg i handlekurv|Kjøp',
    free: 'Uten sulfater, parabener og silikoner.|Fri for mineralolje og mikroplast.',
    plain:
      'Vann|Glyserin|Sheasmør|Kokosolje|Parfyme|Sitronsyre|Pantenol|Aloe vera-juice|Jojobaolje|Keratin|Bivoks|Melkesyre|Xantangummi|Havsalt|Arganolje|Vitamin E|Honning|Lakserolje|Rosmarinekstrakt|Risprotein',
  }),
  cs: cut({
    head: 'Složení|Ingredience|INCI|Složení (INCI)|Složení výrobku|Seznam složek|SLOŽENÍ|Co obsahuje',
    key: 'Klíčové složky|Hlavní účinné látky',
    tabs: 'Popis|Detaily|Použití|Jak používat|Doprava|Vrácení|Hodnocení (4)|Recenze',
    title: 'Krém na vlny Příliv 200 ml|Šampon Útes|Maska Chaluha|Gel Písčina',
    say: 'Lehký krém na unavené vlny.|Změkčuje délky.|Vyrobeno v malých dávkách.|Voní po dešti a fíku.|Vhodné pro citlivou pokožku hlavy.|Lahvička z recyklovaného skla.',
    use: 'Vmačkejte do mokrých vlasů a nechte uschnout.|Vmasírujte, nechte dvě minuty působit, opláchněte.',
    tail: 'Složení se může změnit, sledujte obal.|* z ekologického zemědělství|Pouze pro vnější použití.|Uchovávejte mimo dosah dětí.',
    buy: 'Do košíku|Koupit',
    free: 'Bez sulfátů, parabenů a silikonů.|Neobsahuje minerální oleje ani ftaláty.',
    plain:
      'Voda|Glycerin|Bambucké máslo|Kokosový olej|Parfém|Kyselina citronová|Panthenol|Šťáva z aloe vera|Jojobový olej|Keratin|Včelí vosk|Kyselina mléčná|Xanthanová guma|Mořská sůl|Arganový olej|Vitamin E|Med|Ricinový olej|Rozmarýnový extrakt|Rýžový protein',
  }),
  fi: cut({
    head: 'Ainesosat|Ainesosaluettelo|INCI|Sisältö|Koostumus|Raaka-aineet|AINESOSAT|Mitä se sisältää',
    key: 'Tärkeimmät ainesosat|Tehoaineet',
    tabs: 'Kuvaus|Tuotetiedot|Käyttö|Käyttöohje|Toimitus|Palautus|Arvostelut (2)|Arviot',
    title: 'Laine Kiharavoide 200 ml|Kari Shampoo|Levä Hiusnaamio|Tyrsky Geeli',
    say: 'Kevyt voide väsyneille laineille.|Pehmentää latvat.|Valmistettu pienissä erissä.|Tuoksuu sateelta ja viikunalta.|Sopii herkälle päänahalle.|Pullo on kierrätyslasia.',
    use: 'Rutista märkiin hiuksiin ja anna kuivua.|Hiero, odota kaksi minuuttia, huuhtele.',
    tail: 'Koostumus voi muuttua, tarkista pakkaus.|* luomuviljelystä|Vain ulkoiseen käyttöön.|Säilytä lasten ulottumattomissa.',
    buy: 'Lisää ostoskoriin|Osta',
    free: 'Ei sulfaatteja, parabeeneja eikä silikoneja.|Ilman mineraaliöljyä ja mikromuoveja.',
    plain:
      'Vesi|Glyseriini|Sheavoi|Kookosöljy|Hajuste|Sitruunahappo|Pantenoli|Aloe vera -mehu|Jojobaöljy|Keratiini|Mehiläisvaha|Maitohappo|Ksantaanikumi|Merisuola|Arganöljy|E-vitamiini|Hunaja|Risiiniöljy|Rosmariiniuute|Riisiproteiini',
  }),
  hu: cut({
    head: 'Összetevők|Összetétel|INCI|Hozzávalók|Összetevők (INCI)|Alkotóelemek|ÖSSZETEVŐK|Mit tartalmaz?',
    key: 'Fő összetevők|Kiemelt hatóanyagok',
    tabs: 'Leírás|Részletek|Használat|Használati útmutató|Szállítás|Visszaküldés|Vélemények (5)|Értékelések',
    title: 'Hullám Göndörítő krém 200 ml|Zátony Sampon|Moszat Hajpakolás|Apály Zselé',
    say: 'Könnyű krém fáradt hullámokra.|Puhítja a hajvégeket.|Kis tételekben készül.|Eső és füge illata van.|Érzékeny fejbőrre is jó.|Újrahasznosított üvegben.',
    use: 'Gyűrje a vizes hajba és hagyja megszáradni.|Masszírozza be, várjon két percet, öblítse le.',
    tail: 'Az összetétel változhat, nézze meg a csomagolást.|* ökológiai gazdálkodásból|Csak külsőleg.|Gyermekektől elzárva tartandó.',
    buy: 'Kosárba|Megveszem',
    free: 'Szulfát-, parabén- és szilikonmentes.|Nem tartalmaz ásványi olajat és ftalátot.',
    plain:
      'Víz|Glicerin|Sheavaj|Kókuszolaj|Illatanyag|Citromsav|Pantenol|Aloe vera lé|Jojobaolaj|Keratin|Méhviasz|Tejsav|Xantángumi|Tengeri só|Argánolaj|E-vitamin|Méz|Ricinusolaj|Rozmaringkivonat|Rizsfehérje',
  }),
  ro: cut({
    head: 'Ingrediente|Compoziție|INCI|Lista ingredientelor|Ingrediente (INCI)|Compoziția|INGREDIENTE|Ce conține',
    key: 'Ingrediente cheie|Substanțe active',
    tabs: 'Descriere|Detalii|Mod de utilizare|Cum se folosește|Livrare|Retur|Recenzii (6)|Păreri',
    title: 'Cremă pentru bucle Țărm 200 ml|Șampon Val|Mască Alge|Gel Reflux',
    say: 'O cremă ușoară pentru valuri obosite.|Înmoaie vârfurile.|Făcută în loturi mici.|Miroase a ploaie și a smochine.|Potrivită scalpului sensibil.|Flacon din sticlă reciclată.',
    use: 'Se aplică pe părul ud și se lasă să se usuce.|Se masează, se așteaptă două minute, se clătește.',
    tail: 'Compoziția se poate schimba, verificați ambalajul.|* din agricultură ecologică|Numai pentru uz extern.|A nu se lăsa la îndemâna copiilor.',
    buy: 'Adaugă în coș|Cumpără',
    free: 'Fără sulfați, parabeni și siliconi.|Nu conține ulei mineral sau ftalați.',
    plain:
      'Apă|Glicerină|Unt de shea|Ulei de cocos|Parfum|Acid citric|Pantenol|Suc de aloe vera|Ulei de jojoba|Keratină|Ceară de albine|Acid lactic|Gumă xantan|Sare de mare|Ulei de argan|Vitamina E|Miere|Ulei de ricin|Extract de rozmarin|Proteină de orez',
  }),
};
