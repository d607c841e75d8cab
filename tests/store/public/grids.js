// Grids of the invented shop that its own script builds: nodes used again, an end that never comes, rooms by route.
const byId = (id) => document.getElementById(id);
const sheetOf = () => {
  const card = document.createElement('li');
  card.className = 'card';
  const link = card.appendChild(document.createElement('a'));
  const picture = link.appendChild(document.createElement('img'));
  picture.alt = '';
  picture.width = 320;
  picture.height = 400;
  link.append(document.createElement('b'), document.createElement('br'));
  const cost = link.appendChild(document.createElement('span'));
  cost.className = 'cost';
  cost.append('');
  link.querySelector('b').append('');
  return card;
};
// In place, as grids do that keep their nodes: letters and addresses change, no node comes or goes.
const fill = (card, { link, picture, name, cost }) => {
  card.querySelector('a').setAttribute('href', link);
  card.querySelector('img').setAttribute('src', picture);
  card.querySelector('b').firstChild.data = name;
  card.querySelector('.cost').firstChild.data = cost;
};
const made = (row) => {
  const card = sheetOf();
  fill(card, row);
  return card;
};
const rows = () => JSON.parse(byId('rows').textContent);

// A virtual grid: two dozen nodes for all products, four a line.
const virtual = byId('virtual');
if (virtual) {
  const all = rows();
  const [across, high, kept] = [4, 440, 24];
  virtual.style.cssText = `position: relative; display: block; height: ${Math.ceil(all.length / across) * high}px`;
  const nodes = Array.from({ length: kept }, sheetOf);
  for (const node of nodes) node.style.cssText = 'position: absolute; width: 240px; top: 0; left: 0';
  const shows = [];
  const lay = () => {
    const line = Math.floor((scrollY - virtual.offsetTop) / high) - 1;
    const first = Math.min(Math.max(0, line * across), Math.max(0, all.length - kept));
    for (let at = first; at < Math.min(first + kept, all.length); at++) {
      const node = nodes[at % kept];
      if (shows[at % kept] === at) continue;
      shows[at % kept] = at;
      fill(node, all[at]);
      node.style.transform = `translate(${(at % across) * 260}px, ${Math.floor(at / across) * high}px)`;
    }
  };
  lay();
  virtual.append(...nodes);
  addEventListener('scroll', lay, { passive: true });
}

// A grid without an end: two dozen more whenever its foot comes into view.
const endless = byId('endless');
if (endless) {
  const all = rows();
  new IntersectionObserver(([foot]) => {
    if (!foot.isIntersecting) return;
    setTimeout(() => endless.append(...all.splice(0, 24).map(made)), 80);
  }).observe(byId('foot'));
}

// Rooms: one document, a route for each.
const room = byId('room');
async function enter() {
  const at = location.pathname;
  const { title, products, words } = await (await fetch(`/parts${at}`)).json();
  if (at !== location.pathname) return;
  const heading = document.createElement('h1');
  heading.textContent = title;
  const list = document.createElement(products ? 'ul' : 'p');
  if (products) {
    list.className = 'goods';
    list.append(...products.map(made));
  } else list.textContent = words;
  room.replaceChildren(heading, list);
  document.title = title;
}
if (room) {
  addEventListener('click', (event) => {
    const door = event.target.closest('[data-door]');
    if (!door) return;
    event.preventDefault();
    history.pushState({}, '', door.getAttribute('href'));
    enter();
  });
  addEventListener('popstate', enter);
  enter();
}
