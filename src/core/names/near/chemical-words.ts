/** What chemical words are made of. A word made of these alone is one, whether or not the dictionary knows it. */
const stems = new Set(
  `mono di tri tetra penta hexa hepta octa nona deca undeca dodeca trideca hen icos eicos docos tetracos bis tris tetrakis
poly oligo sesqui iso neo cyclo bicyclo tricyclo sec tert nor homo per hydro hydroxy dehydro oxy oxo oxa oxide oxime epoxy peroxy
alkoxy deoxy amino imino amido amidine amine amide amine imide imine nitro nitrile nitrite azo aza azine azole azoline diazo thio thia thi sulfo sulfon
sulfin sulfonyl sulfate sulfite sulfonate phospho phosph phosphon phosphate phosphite silyl silox silan silic silane siloxane siloxanes
stann bor chlor chloro brom bromo iod iodo fluor fluoro cyan cyano carb carbo carbon carboxy carbonyl carbamate carbam formyl form acet aceto
acetyl acetoxy lact malon succin succino glutar adip sebac azela pimel malic male fumar tartar citr glycol glycer glycero glyceryl ox
meth methyl methoxy eth ethyl ethoxy prop propyl propoxy propion but butyl butoxy butyr pent pentyl amyl valer hex hexyl hept heptyl
oct octyl non nonyl dec decyl undec undecyl dodec dodecyl tridec tridecyl tetradec pentadec hexadec heptadec octadec nonadec laur
lauryl myrist palmit stear ste ole ol olein linol linole linolen ricin ricinole behen arachid erucic erucyl erucic cet cetyl cetear cetearyl capr capro capryl
caprylyl coc coco cocoyl tallow benz benzo benzoyl benzyl phen phenyl phenol phenoxy phenon tol tolu cresyl xyl xylen
naphth naphtho anthr anthra pyr pyrrol pyrid pyrim pyrrolid pip piper pipera morphol imid imidaz oxaz thiaz tria indol fur furan furfur
quinol purin cinnam salicyl anis vanill ger gerani ner nerol linal citronell terp terpin born menth camph pin limon far farnes
vinyl allyl crot acryl acrylo methacryl styr ylene ylidene ylium hist ribo gluco galacto fructo manno xylo arabino
yl oyl oylo al an ane anes anol anone ate ates en ene enes enol enal ine ines in ic ium id ide ides ite ol ols ole ol one ones onic onate onium
ose oside oate oic ylic eth oxin lactone lactam ester ether thiol diol triol dione dien diene trien triene yne ynol`.split(
    /\s+/,
  ),
);
const longestStem = 10;

/** Whether a word is made of chemical stems from end to end. */
export function isChemicalWord(word: string): boolean {
  if (word.length > 60) return false;
  const reached = new Set([0]);
  for (let at = 0; at < word.length; at++) {
    if (!reached.has(at)) continue;
    for (let end = at + 2; end <= Math.min(word.length, at + longestStem); end++)
      if (stems.has(word.slice(at, end))) reached.add(end);
  }
  return reached.has(word.length);
}
