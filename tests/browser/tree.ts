// The browser's own accessibility tree as lines that a person can read: role, name, states, one node a line.
import type { Page } from 'playwright-core';

type Value = { value?: unknown };
type Node = {
  nodeId: string;
  ignored: boolean;
  role?: Value;
  name?: Value;
  value?: Value;
  description?: Value;
  properties?: { name: string; value: Value }[];
  childIds?: string[];
};

const unsaid = new Set([
  'strong',
  'none',
  'generic',
  'InlineTextBox',
  'LineBreak',
  'ListMarker',
  'LabelText',
  'LayoutTableRow',
]);
// What a browser builds a field of is its own affair.
const inside = new Set(['Date', 'textbox', 'searchbox']);
const states = [
  'checked',
  'pressed',
  'expanded',
  'selected',
  'disabled',
  'invalid',
  'level',
  'required',
  'live',
];

/**
 * The part of the tree below the first node of this role and name; of what stands in shadow roots too. Without `prose`
 * running text is left out and a hint is only said to be there, so that a sentence may be worded anew.
 */
export async function treeOf(page: Page, role: string, name: RegExp, prose = true): Promise<string> {
  const session = await page.context().newCDPSession(page);
  await session.send('Accessibility.enable');
  const { nodes } = (await session.send('Accessibility.getFullAXTree')) as unknown as { nodes: Node[] };
  await session.detach();
  const byId = new Map(nodes.map((node) => [node.nodeId, node]));
  const start = nodes.find((node) => node.role?.value === role && name.test(String(node.name?.value ?? '')));
  if (!start) throw new Error(`no ${role} ${name} in the tree`);
  const lines: string[] = [];
  const walk = (node: Node, depth: number, around: string) => {
    const what = String(node.role?.value ?? '');
    const called = String(node.name?.value ?? '').trim();
    // Letters that the element around them is named by are said once.
    const said =
      what === 'StaticText'
        ? !prose || !called || around.includes(called)
        : unsaid.has(what) || (!prose && what === 'paragraph');
    const shown = !node.ignored && !said;
    if (shown) {
      const is = (node.properties ?? [])
        .filter(
          ({ name: state, value }) =>
            states.includes(state) && ![false, 'false', 'off'].includes(value.value as string),
        )
        .map(({ name: state, value }) =>
          value.value === true || value.value === 'true' ? state : `${state}=${value.value}`,
        );
      const written =
        node.value?.value === undefined || node.value.value === '' ? '' : ` = "${node.value.value}"`;
      const hint = node.description?.value;
      const more = hint ? ` (${prose || is.includes('invalid') ? hint : 'with a hint'})` : '';
      const line = `${what === 'StaticText' ? 'text' : what} "${prose || !/cell$/.test(what) ? called : called.slice(0, 24)}"${written}${is.length > 0 ? ` [${is.join(', ')}]` : ''}${more}`;
      lines.push(`${'  '.repeat(depth)}${line}`);
    }
    if (inside.has(what)) return;
    for (const id of node.childIds ?? []) {
      const child = byId.get(id);
      if (child) walk(child, shown ? depth + 1 : depth, shown ? called : around);
    }
  };
  walk(start, 0, '');
  // Ports and days are what they are.
  const lasting = lines
    .join('\n')
    .replace(/localhost:\d+/g, 'localhost')
    .replace(/(read on) \w+ \d+, \d+/g, '$1 a day');
  return `${lasting}\n`;
}
