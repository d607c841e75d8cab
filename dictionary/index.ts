/** The dictionary as data: `entries`, `patterns` and `limits` are what `createLookup` takes. */
import type { UseLevels } from '../src/core/amounts/use-levels.ts';
import type { Entry, Limits, Pattern, SourceWords } from '../src/core/names/entry.ts';
import allergensFile from './allergens.json' with { type: 'json' };
import useLevels from './amounts/use-levels.json' with { type: 'json' };
import acidsAndAlkalis from './entries/acids-and-alkalis.json' with { type: 'json' };
import actives from './entries/actives.json' with { type: 'json' };
import algaeAndFungi from './entries/algae-and-fungi.json' with { type: 'json' };
import butters from './entries/butters.json' with { type: 'json' };
import cationicConditioners from './entries/cationic-conditioners.json' with { type: 'json' };
import chelating from './entries/chelating.json' with { type: 'json' };
import colourants from './entries/colourants.json' with { type: 'json' };
import emulsifiers from './entries/emulsifiers.json' with { type: 'json' };
import essentialOils from './entries/essential-oils.json' with { type: 'json' };
import esters from './entries/esters.json' with { type: 'json' };
import fattyAcids from './entries/fatty-acids.json' with { type: 'json' };
import fattyAlcohols from './entries/fatty-alcohols.json' with { type: 'json' };
import fragrance from './entries/fragrance.json' with { type: 'json' };
import humectants from './entries/humectants.json' with { type: 'json' };
import hydrocarbons from './entries/hydrocarbons.json' with { type: 'json' };
import lipids from './entries/lipids.json' with { type: 'json' };
import minerals from './entries/minerals.json' with { type: 'json' };
import oils from './entries/oils.json' with { type: 'json' };
import plantsFruitsAndSeeds from './entries/plants-fruits-and-seeds.json' with { type: 'json' };
import plantsLeavesAndFlowers from './entries/plants-leaves-and-flowers.json' with { type: 'json' };
import plantsRootsAndBarks from './entries/plants-roots-and-barks.json' with { type: 'json' };
import plantsWhole from './entries/plants-whole.json' with { type: 'json' };
import polymers from './entries/polymers.json' with { type: 'json' };
import preservatives from './entries/preservatives.json' with { type: 'json' };
import propellants from './entries/propellants.json' with { type: 'json' };
import proteins from './entries/proteins.json' with { type: 'json' };
import proteinsPrinted from './entries/proteins-printed.json' with { type: 'json' };
import silicones from './entries/silicones.json' with { type: 'json' };
import solvents from './entries/solvents.json' with { type: 'json' };
import surfactants from './entries/surfactants.json' with { type: 'json' };
import thickeners from './entries/thickeners.json' with { type: 'json' };
import uvFilters from './entries/uv-filters.json' with { type: 'json' };
import vitaminsAndAntioxidants from './entries/vitamins-and-antioxidants.json' with { type: 'json' };
import waxes from './entries/waxes.json' with { type: 'json' };
import { expand } from './expand.ts';
import { labelWords } from './finding/index.ts';
import limitsFile from './limits.json' with { type: 'json' };
import patternWords from './pattern-words.json' with { type: 'json' };
import patternsFile from './patterns.json' with { type: 'json' };
import printedOften from './printed-often.json' with { type: 'json' };

export const entries = [
  acidsAndAlkalis,
  actives,
  algaeAndFungi,
  butters,
  cationicConditioners,
  chelating,
  colourants,
  emulsifiers,
  essentialOils,
  esters,
  fattyAcids,
  fattyAlcohols,
  fragrance,
  humectants,
  hydrocarbons,
  lipids,
  minerals,
  oils,
  plantsFruitsAndSeeds,
  plantsLeavesAndFlowers,
  plantsRootsAndBarks,
  plantsWhole,
  polymers,
  preservatives,
  propellants,
  proteins,
  proteinsPrinted,
  silicones,
  solvents,
  surfactants,
  thickeners,
  uvFilters,
  vitaminsAndAntioxidants,
  waxes,
].flat() as Entry[];
export const patterns = expand(patternsFile as Pattern[], patternWords);
/** Ceilings, thresholds, usual shares, the words by which any name tells its source, names that rules read. */
export const limits: Limits = {
  ...limitsFile,
  usual: useLevels as unknown as UseLevels,
  sourceWords: allergensFile as SourceWords[],
  labelWords,
  printedOften,
};
export { findingFacts } from './finding/index.ts';
