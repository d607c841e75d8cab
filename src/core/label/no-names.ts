/** Words that stand among names, or beside one, and name nothing: what a thing does, praise, kinds of product. */

const does = `emollients? emulsifiers? emulsifier emulsifying humectants? preservatives? preservative surfactants?
cleansing conditioning moisturi[sz]ing antioxidants? solvents? thickeners?
thickening stabili[sz]ers? stabili[sz]ing viscosity controlling control chelators? chelating agents? colou?rants? dyes?
adjusters? buffers? buffering skin hair protectants? protecting protection smoothing
lubricants? slip foam foaming booster boosters opacifiers? opacifying pearli[sz]ing fixatives? film formers? former forming
antistatic detangling sunscreens? filters? exfoliants? exfoliating astringents? binders? binding bulking
absorbents? antimicrobial antibacterial antiseptic deodorant masking perfuming ph preservation texturi[sz]ers?
konservierungsmittel konservierungsstoffe? feuchtigkeitsspender emulgatoren? emulgator tensid tenside lösungsmittel
antioxidationsmittel verdickungsmittel farbstoffe? duftstoffe? hautpflegend rückfettend waschaktive substanz
conservateurs? conservateur émollients? humectant tensioactifs? épaississants? antioxydants? colorants? solvant
conservantes? conservante emolientes? emoliente humectantes? tensioactivos? espesantes? colorantes?
conservanti conservante emollienti emolliente umettanti umettante tensioattivi coloranti addensanti`;

const grown = `organic organically natural naturally pure certified vegan vegetable plant plants derived origin source sourced
sustainable sustainably raw unrefined refined virgin fresh wild bio biologique biologisch biologico ecologico natural-origin
fairtrade fair trade ecocert cosmos usda non-gmo gmo kosher halal food-grade food grade quality premium grade usp nf ep bp
ifra natürlich natürlichen ursprungs naturel naturelle naturels naturelles`;

const praise = `softens? soften softening smooths? smoothes smoothing smoother soothes? soothe soothing nourish nourishes nourishing
nourished hydrates? hydrating hydration moisturi[sz]es? moisturi[sz]e moisture replenish replenishes replenishing restores? restore
restorative restoring repairs? repair repairing strengthens? strengthen strengthening protects? protect firms? firm firmer firming
plumps? plump plumping calms? calm calming brighten brightens brighter brightening radiance radiant glow glowing shine shiny shines
gloss glossy supple suppleness softness comfort comforting refresh refreshes refreshing revitali[sz]es? revitali[sz]ing rejuvenates?
invigorates? invigorating energi[sz]es? tones? toning volume volumi[sz]ing bounce bouncy body definition defined defining frizz frizzy
anti-frizz strength elasticity elastic damage damaged breakage dry dryness dull curls? curly coily wavy waves? locks strands? ends
roots scalp skin hair face body fine lines wrinkles? uneven tone texture tired eyes dark circles pores? blemishes acne-prone
sensitive oily normal combination mature ageing aging anti-ageing anti-aging promotes? promote promoting helps? help improves? improve
improving boosts? boost boosting enhances? enhance enhancing reduces? reduce reducing prevents? prevent preventing fights? fight
delivers? deliver provides? provide supports? support gently gentle deeply deep intense intensely instantly instant daily everyday
long-lasting lasting lightweight rich creamy silky smooth soft healthy healthier healthy-looking beautiful clean cleanse cleanses
cleansed free sulfate-free sulphate-free silicone-free paraben-free cruelty-free cruelty vegan-friendly friendly tested dermatologically
dermatologist dermatologists clinically proven safe powerful potent antioxidants? vitamins minerals nutrients? essential
superfoods? botanicals? botanical blend formula formulation formulated technology complex-free new improved original with without and
for the of your our a an to from in all every more less no not &`;

const products = `cleansers? moisturi[sz]ers? detangler softeners? shampoos? shampooing conditioners? conditioner mask masks masque treatments? treatment leave-in leave serum serums
creams? cream crème lotions? lotion gels? mousse foam spray mist balm balms butter-cream scrub wash wax-free cleanser toner tonic
rinse co-wash cowash pre-shampoo styling styler curl set kit duo trio bundle travel mini size sizes full refill bottle jar tube pack sachet sample
step steps product products item items day night after before repair care haircare skincare range collection edition restorative
après-shampooing haarmaske spülung maschera balsamo acondicionador champú mascarilla condicionador máscara creme`;

const cautions = `warning warnings caution cautions external use only keep out reach children avoid contact eyes discontinue irritation
occurs consult doctor physician store cool place expiry expires best before made produced manufactured distributed imported uk usa eu
china france italy germany spain korea japan poland australia canada always check pack packaging label latest list lists information
batch lot code recycle recyclable please see may change subject vary contains contain allergens? egg nuts? gluten dairy sugar lactose`;

const abroad = `hergestellt produziert verwendung äußerlich äußerliche außer reichweite kindern aufbewahren kontakt augen vermeiden
enthält   ohne frei parfümfrei silikonfrei geprüft getestet dermatologisch pflegt pflege haar haare haut spülen
fabriqué fabriquée conçu conserver portée enfants éviter yeux contact usage externe contient     traces total origine
composants composant naturels naturelles issus provenant testé testée sous contrôle dermatologique hydrate nourrit répare cheveux peau
hecho fabricado elaborado uso externo evitar ojos mantener alcance niños contiene trazas   sin libre probado dermatológicamente
cabello piel prodotto fatto usare esterno evitare contatto occhi tenere lontano portata bambini contiene tracce   senza capelli
pelle naturali componenti fabricado feito externo evite olhos manter alcance crianças contém  sem cabelo pele
wyprodukowano zawiera bez włosy skóra naturalne pochodzenia bevat zonder haar huid natuurlijke oorsprong vervaardigd
deutschland frankreich italien spanien france españa italia   polska nederland london paris new york ltd inc llc gmbh sarl co`;

const sizes = `net wt oz fl ml months month mois monate year years exp exp. see crimp lot batch pzn pao patent patents pending us questions call tel
hypoallergenic hypoallergénique hypoallergen descending order percent celsius below above temperature colour color coloured safe suitable vegans vegetarians
traces occurring naturally derived obtained composed total ingredient ingredients ingrédient ingrédients inhaltsstoffe zutaten ingredientes ingredienti
control tested dermatological parabens paraben silicones silicone sulfates sulphates phthalates mineral-oil etc love`;

const small = `a an and are as at be but by can each for from has have if in into is it its of on or our so than that the their them these this those to use
used we when which while who will with without you your de la le les des du et pour avec dans une sur en un au aux der die das und mit für von den dem ein eine ist im zum
para con por que los las del una el y e il di per dei delle nel da do com na no os um uma z i w na dla het een van voor met op`;

const lists = (...all: string[]) => all.flatMap((list) => list.trim().split(/\s+/));
const oneOf = (...all: string[]) => new RegExp(`^(?:${lists(...all).join('|')})$`, 'iu');

const remark = oneOf(does, grown);
const anything = oneOf(does, grown, praise, products, cautions);
const telling = oneOf(does, grown, praise, products, cautions, abroad, sizes);
const smallWord = oneOf(small);
// "Contains egg": a caution about allergens, in a few words.
const contains =
  /^\W*(?:may )?(?:contains?|traces? of|enthält|kann .{0,20}enthalten|contient|contiene|contém|zawiera|bevat)\b.{0,60}$/iu;
const measure =
  /^[(<>~≈±]*\d+(?:[.,]\d+)?(?:mg|g|kg|ml|l|oz|ppm|iu|mcg|µg|%|m)?(?:\/(?:g|ml|kg|l|oz|100g))?[).]*$/iu;
const sign =
  /^[^\p{L}\d]+$|^\(?[\p{Script=Greek}]\)?$|^\(\d{1,2}\)$|^\((?:i{1,3}|iv|vi{0,3})\)$|^[¹²³⁰⁴-⁹]+$/iu;

const wordsOf = (text: string) => text.split(/[\s,;:/|•·()[\]"“”!.*†‡°©◊]+/).filter(Boolean);
const spokenIn = (text: string) => wordsOf(text.slice(0, 400)).filter((word) => /\p{L}/u.test(word));

/** A word beside a name that says what it does, how it was grown or how much it is; or a mark. */
export const isLeftover = (token: string): boolean =>
  sign.test(token) ||
  (measure.test(token) && /\p{L}|%/u.test(token)) ||
  /^(?:mg|ml|g|iu|ppm|percent)\.?(?:\/(?:g|ml|kg|l|100\s?g))?$/i.test(token) ||
  wordsOf(token).every((word) => remark.test(word));

/** Whether a text that is no name holds nothing but such words: no mention, and nothing to ask. */
export function isNoName(text: string): boolean {
  const words = spokenIn(text);
  return words.length > 0 && words.every((word) => anything.test(word) || measure.test(word));
}

/**
 * Whether a text that is no name and stands where sentences stand (after a full stop, after the last name) is
 * one: some of its words are such words or small ones, and of the rest none is a word of names, or few are.
 */
export function isAside(text: string, isOfNames: (word: string) => boolean): boolean {
  if (contains.test(text.trim()) && spokenIn(text).length <= 6) return true;
  const words = spokenIn(text).filter((word) => !measure.test(word));
  const tells = words.filter((word) => telling.test(word)).length;
  const plain = tells + words.filter((word) => smallWord.test(word)).length;
  const names = words.filter((word) => !telling.test(word) && isOfNames(word)).length;
  if (tells === 0) return false;
  return names === 0 ? words.length > 1 || tells === 1 : words.length > 2 && plain / words.length >= 0.5;
}
