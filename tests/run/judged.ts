// `npm run judged`: how the program answers judged cases, one line a table. `-- --why fits` shows the rows it
// gets wrong; STRANDLINE_JUDGED names another folder of rows.
import { judgedFolder } from '../judged/rows.ts';
import { scoreTable, tables } from '../judged/score.ts';

const why = process.argv.indexOf('--why');
const shown = why < 0 ? undefined : process.argv[why + 1];
const percent = (right: number, of: number) => `${((100 * right) / of).toFixed(1)} %`;

for (const table of shown ? [shown] : tables) {
  const score = scoreTable(table);
  if (!score) {
    console.log(`${table.padEnd(15)} skipped: no ${table}.tsv in ${judgedFolder}`);
    continue;
  }
  const figures = [...Map.groupBy(score.marks, ({ of }) => of)].map(([of, marks]) => {
    const right = marks.filter((mark) => mark.right).length;
    return `${of} ${percent(right, marks.length)} (${right}/${marks.length})`;
  });
  console.log(`${table.padEnd(15)} ${figures.join(' · ')}`);
  if (shown)
    for (const { right, of, row, why: reason } of score.marks)
      if (!right) console.log(`  ${of}: ${row}\n      ${reason}`);
}
