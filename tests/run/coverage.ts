// `npm run coverage`: how many names on labels are found, and how well lists are found on pages.
import { printNameCoverage } from './coverage-names.ts';
import { printPageCoverage, printRandomCoverage } from './coverage-pages.ts';

printNameCoverage();
printPageCoverage();
printRandomCoverage();
