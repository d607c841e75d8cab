// Behaviour of the invented shop's pages: plain, external (the pages have a strict CSP), no library.
const byId = (id) => document.getElementById(id);
const part = async (path) => {
  const box = document.createElement('div');
  const text = await (await fetch(path)).json();
  for (const { tag, words, link, picture } of text) {
    const node = document.createElement(tag);
    node.textContent = words ?? '';
    if (link) node.href = link;
    if (picture) {
      node.src = picture;
      node.alt = '';
      node.width = 120;
      node.height = 150;
    }
    box.append(node);
  }
  return [...box.childNodes];
};

document.addEventListener('click', async (event) => {
  const at = event.target.closest?.(
    '[role=tab],[data-opens],[data-shuts],[data-loads],[data-mounts],[data-unfolds],label-opener,a[data-route]',
  );
  if (!at) return;
  if (at.matches('[role=tab]')) {
    event.preventDefault();
    const chosen = at.getAttribute('href').slice(1);
    const panels = at.closest('.items') ?? document.querySelector('.panels');
    for (const panel of panels.querySelectorAll('[role=tabpanel]')) panel.hidden = panel.id !== chosen;
    for (const tab of document.querySelectorAll('[role=tab]'))
      tab.setAttribute('aria-selected', String(tab === at));
  } else if (at.matches('[data-opens]')) byId(at.dataset.opens).showModal();
  else if (at.matches('label-opener')) byId(at.dataset.for).setAttribute('open', '');
  else if (at.matches('[data-shuts]')) at.closest('label-box').removeAttribute('open');
  else if (at.matches('[data-unfolds]')) document.querySelector('[data-unfold]').hidden = false;
  else if (at.matches('[data-loads]'))
    byId(at.dataset.into).replaceChildren(...(await part(at.dataset.loads)));
  else if (at.matches('[data-mounts]')) {
    const box = byId(at.dataset.mounts);
    const open = at.getAttribute('aria-expanded') !== 'true';
    at.setAttribute('aria-expanded', String(open));
    const text = document.createElement('p');
    text.textContent = box.dataset.holds;
    box.replaceChildren(...(open ? [text] : []));
  } else if (at.matches('[data-route]')) {
    event.preventDefault();
    history.pushState({}, '', at.getAttribute('href'));
    route();
  }
});

document.addEventListener('change', async (event) => {
  const from = event.target.dataset?.swaps;
  if (from) byId('swapped').replaceChildren(...(await part(from)));
});

// The client-side router: /shelf lists, /shelf/<id> shows one good, drawn into #shelf.
async function route() {
  const shelf = byId('shelf');
  if (!shelf) return;
  const at = location.pathname;
  const nodes = await part(`/parts${at}`);
  if (at !== location.pathname) return; // a later route won
  for (const node of nodes) if (node.matches('a')) node.dataset.route = '';
  shelf.replaceChildren(...nodes);
  document.title = `${nodes[0]?.textContent ?? 'Shelf'} · Dunnocksea Apothecary`;
}
addEventListener('popstate', route);
route();

// The stream: each time its end comes into view, the next card with its own list is drawn.
const stream = byId('stream');
if (stream) {
  let next = 0;
  let busy = false;
  new IntersectionObserver(async ([end]) => {
    if (!end.isIntersecting || busy) return;
    busy = true;
    const card = document.createElement('article');
    card.className = 'sheet';
    card.append(...(await part(`${stream.dataset.stream}${next++}`)));
    stream.append(card);
    busy = false;
  }).observe(byId('stream-end'));
}

// The rack: its order turned round, and more cards as one scrolls.
document.addEventListener('click', ({ target }) => {
  const rack = byId('rack');
  if (!rack) return;
  if (target.id === 'sort') rack.append(...[...rack.children].reverse());
  if (target.id === 'more') rack.append(byId('rest').content.cloneNode(true));
});
