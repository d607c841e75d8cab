// `npm run coverage`: how many names on labels are found, and how well lists are found on pages.

import '../../src/page/begin-ours.ts';
import { printFreshCoverage } from './coverage-fresh.ts';
import { printDressed, printFar, printMending, printNameCoverage } from './coverage-names.ts';
import { printApartCoverage, printLaterCoverage, printOtherCoverage } from './coverage-other.ts';
import { printPageCoverage, printRandomCoverage } from './coverage-pages.ts';
import { printPictures } from './coverage-pictures.ts';
import { printRealCoverage } from './coverage-real.ts';
import { printShapeCoverage } from './coverage-shapes.ts';
import { printWhy } from './coverage-why.ts';

const why = process.argv.indexOf('--why');
if (why > 0) printWhy(process.argv[why + 1]!);
else {
  printNameCoverage();
  printMending();
  printDressed();
  printFar();
  printPageCoverage();
  printRandomCoverage();
  printShapeCoverage();
  printFreshCoverage();
  printOtherCoverage();
  printLaterCoverage();
  printApartCoverage();
  await printRealCoverage();
  await printPictures();
}
