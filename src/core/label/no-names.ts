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

const oneOf = (...lists: string[]) =>
  new RegExp(`^(?:${lists.flatMap((list) => list.trim().split(/\s+/)).join('|')})$`, 'iu');

const remark = oneOf(does, grown);
const anything = oneOf(does, grown, praise, products, cautions);
const measure =
  /^[(<>~≈±]*\d+(?:[.,]\d+)?(?:mg|g|kg|ml|l|oz|ppm|iu|mcg|µg|%)?(?:\/(?:g|ml|kg|l|oz|100g))?[).]*$/iu;
const sign =
  /^[^\p{L}\d]+$|^\(?[\p{Script=Greek}]\)?$|^\(\d{1,2}\)$|^\((?:i{1,3}|iv|vi{0,3})\)$|^[¹²³⁰⁴-⁹]+$/iu;

const wordsOf = (text: string) => text.split(/[\s,;:/|•·()[\]"“”!.]+/).filter(Boolean);

/** A word beside a name that says what it does, how it was grown or how much it is; or a mark. */
export const isLeftover = (token: string): boolean =>
  sign.test(token) ||
  (measure.test(token) && /\p{L}|%/u.test(token)) ||
  /^(?:mg|ml|g|iu|ppm|percent)\.?(?:\/(?:g|ml|kg|l|100\s?g))?$/i.test(token) ||
  wordsOf(token).every((word) => remark.test(word));

/** Whether a text that is no name holds nothing but such words: no mention, and nothing to ask. */
export function isNoName(text: string): boolean {
  const words = wordsOf(text.slice(0, 400)).filter((word) => /\p{L}/u.test(word));
  return words.length > 0 && words.every((word) => anything.test(word) || measure.test(word));
}
