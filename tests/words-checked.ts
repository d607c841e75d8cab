import { faults } from '../src/ui/words/index.ts';

// A message that is missing or lacks an argument fails the test that says it.
faults.report = (what) => {
  throw new Error(what);
};
