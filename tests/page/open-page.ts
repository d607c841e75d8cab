/** White space as single spaces: how lists are compared. */
export const plain = (text: string) => text.replace(/\s+/g, ' ').trim();

/** Puts a saved page into a document and opens its declarative shadow roots, as a browser does. */
export function openPage(document: Document, html: string): void {
  const [, head = '', body = ''] =
    /<head>([\s\S]*?)<\/head>[\s\S]*?<body[^>]*>([\s\S]*?)<\/body>/.exec(html) ?? [];
  document.head.innerHTML = head;
  document.body.innerHTML = body;
  openShadowRoots(document);
}

function openShadowRoots(root: Document | ShadowRoot): void {
  for (const template of root.querySelectorAll<HTMLTemplateElement>('template[shadowrootmode]')) {
    const host = template.parentElement!;
    const shadow = host.attachShadow({ mode: 'open' });
    shadow.append(template.content);
    template.remove();
    openShadowRoots(shadow);
  }
}
