// SPDX-License-Identifier: MIT
/// The script of the class page: it folds the sheet on the table step by step, switches between correct and wrong
/// books, and highlights a page wherever it is shown. All facts come from the data that the page contains.
#pragma once

namespace bifolium {
inline namespace v0 {
namespace detail {

inline constexpr char const* class_script = R"js('use strict';
const data = JSON.parse(document.getElementById('walk').textContent);
const by = id => document.getElementById(id), table = by('table'), still = by('still');
still.checked = matchMedia('(prefers-reduced-motion: reduce)').matches;

// A layer is [cell, row, column, page up, upside down?, page below, leaf]; a state, the piles of all pieces.
const gap = 0.12, states = [{piles: new Map(data.start), off: new Map(data.sheets)}];
for (const step of data.steps) {
  const last = states[states.length - 1], next = {piles: new Map(last.piles), off: new Map(last.off)};
  next.piles.delete(step.piece);
  step.after.forEach(([piece, pile], i) => {
    next.piles.set(piece, pile);
    const [x, y] = last.off.get(step.piece), apart = step.cut ? (i ? gap : -gap) : 0;
    next.off.set(piece, step.upright ? [x + apart, y] : [x, y + apart]);
  });
  states.push(next);
}
const box = {left: 1e9, top: 1e9, right: -1e9, bottom: -1e9};
for (const {piles, off} of states) for (const [piece, pile] of piles) for (const [, row, column] of pile) {
  const [x, y] = off.get(piece);
  box.left = Math.min(box.left, x + column), box.right = Math.max(box.right, x + column + 1);
  box.top = Math.min(box.top, y + row), box.bottom = Math.max(box.bottom, y + row + 1);
}
let at = 0, running = null, size = {w: 0, h: 0}, lit = null;

const turns = (step, layer) => ((step.upright ? layer[2] : layer[1]) < step.line) === step.low;
function tops(pile) {
  const up = new Map();
  for (const layer of pile) {
    const key = layer[1] + ' ' + layer[2], below = up.get(key);
    up.set(key, {layer, deep: below ? below.deep + 1 : 1});
  }
  return [...up.values()];
}
function leaf(layer, off, deep, down, page) {
  const cell = document.createElement('div');
  cell.className = 'leaf-up' + (down ? ' down' : '');
  cell.style.cssText = `left:${(off[0] + layer[2] - box.left) * size.w}px;top:${(off[1] + layer[1] - box.top) * size.h}px;` +
    `width:${size.w}px;height:${size.h}px;font-size:${Math.min(size.w * .42, size.h * .45)}px`;
  const edges = Math.min(deep - 1, 5);
  cell.style.boxShadow = Array.from({length: edges}, (_, i) =>
    `${2 * i + 2}px ${2 * i + 2}px 0 -0.5px #fff, ${2 * i + 2}px ${2 * i + 2}px 0 0.5px #000`).join(',');
  cell.dataset.page = page, cell.dataset.leaf = layer[6];
  cell.append(Object.assign(document.createElement('span'), {textContent: page}));
  return cell;
}
function lay(state, step, part) { // `part` false: only what stays when the step is taken
  table.replaceChildren();
  for (const [piece, pile] of state.piles) {
    const here = step && !part && piece === step.piece && !step.cut ? pile.filter(l => !turns(step, l)) : pile;
    for (const {layer, deep} of tops(here)) {
      const cell = leaf(layer, state.off.get(piece), deep, layer[4], layer[3]);
      if (step && part && piece === step.piece && !step.cut && turns(step, layer)) cell.classList.add('moves');
      table.append(cell);
    }
  }
  if (step && part) table.append(lineOf(step, state));
}
function lineOf(step, state) {
  const pile = state.piles.get(step.piece), [x, y] = state.off.get(step.piece), line = document.createElement('div');
  const rows = pile.map(l => l[1]), columns = pile.map(l => l[2]);
  const top = Math.min(...rows), left = Math.min(...columns);
  line.className = 'crease';
  line.style.cssText = step.upright
    ? `left:${(x + step.line - box.left) * size.w - 2}px;top:${(y + top - box.top) * size.h - 8}px;` +
      `height:${(Math.max(...rows) + 1 - top) * size.h + 16}px;border-left-width:4px`
    : `top:${(y + step.line - box.top) * size.h - 2}px;left:${(x + left - box.left) * size.w - 8}px;` +
      `width:${(Math.max(...columns) + 1 - left) * size.w + 16}px;border-top-width:4px`;
  if (step.cut) line.style.borderStyle = 'solid';
  return line;
}
function flap(step, before, after) {
  const off = before.off.get(step.piece), moved = before.piles.get(step.piece).filter(l => turns(step, l));
  const then = new Map(after.piles.get(step.piece).map(l => [l[0], l])), part = document.createElement('div');
  part.className = 'flap';
  part.style.transformOrigin = `${(off[0] + step.line - box.left) * size.w}px ${(off[1] + step.line - box.top) * size.h}px`;
  for (const {layer} of tops(moved)) part.append(leaf(layer, off, 1, layer[4], layer[3]));
  for (const {layer} of tops([...moved].reverse())) {
    const later = then.get(layer[0]), back = leaf(layer, off, 1, later[4], later[3]);
    back.style.transform = step.upright ? 'rotateY(180deg)' : 'rotateX(180deg)';
    part.append(back);
  }
  return part;
}
function turn(step, before, after, forward, done) {
  lay(before, step, false);
  const part = flap(step, before, after), sign = (step.upright === step.low) === !step.under ? 1 : -1;
  const end = step.upright ? `rotateY(${180 * sign}deg)` : `rotateX(${180 * sign}deg)`;
  const start = step.upright ? 'rotateY(0deg)' : 'rotateX(0deg)', high = step.under ? -2 : 2;
  const frames = [{transform: `translateZ(1px) ${start}`}, {transform: `translateZ(${high}px) ${end}`}];
  table.append(part);
  const motion = part.animate(forward ? frames : frames.reverse(), {duration: 1100, easing: 'ease-in-out', fill: 'forwards'});
  // A hidden page is not animated, so a timer ends each step that the animation does not end.
  const end_by = setTimeout(() => running && running(), 1400);
  running = () => { running = null; clearTimeout(end_by); motion.cancel(); done(); };
  motion.onfinish = () => running && running();
}
function show() {
  const step = data.steps[at], done = data.steps[at - 1], state = states[at];
  lay(state, step, true);
  const rows = new Map();
  for (const [, pile] of state.piles) for (const {layer} of tops(pile)) {
    const row = rows.get(layer[1]) || [];
    row.push([layer[2], layer[3] + (layer[4] ? ' upside down' : '')]);
    rows.set(layer[1], row);
  }
  table.setAttribute('aria-label', 'Pages that are up, from the far row: ' + [...rows].sort((a, b) => a[0] - b[0])
    .map(([, row]) => row.sort((a, b) => a[0] - b[0]).map(one => one[1]).join(', ')).join('; '));
  by('step').textContent = (done ? `${at} of ${data.steps.length} done: ${done.words} ` : 'The sheet lies flat, inner side up. ') +
    (step ? `Next: ${step.words}` : data.last);
  by('back').setAttribute('aria-disabled', at === 0);
  by('forward').setAttribute('aria-disabled', at === data.steps.length);
  document.body.dataset.step = at;
  if (lit) mark(lit);
}
function go(to) {
  if (running) running();
  if (to < 0 || to > data.steps.length || to === at) return;
  const forward = to > at, step = data.steps[Math.min(at, to)], near = Math.abs(to - at) === 1;
  const before = states[Math.min(at, to)], after = states[Math.max(at, to)];
  at = to;
  if (near && !still.checked && !step.cut && table.animate) turn(step, before, after, forward, show); else show();
}
function measure() {
  const columns = box.right - box.left, rows = box.bottom - box.top, wide = table.parentElement.clientWidth - 16;
  size.w = Math.min(wide / columns, innerHeight * .62 / rows * data.ratio);
  size.h = size.w / data.ratio;
  table.style.width = columns * size.w + 'px', table.style.height = rows * size.h + 12 + 'px';
  if (running) running(); else show();
}
by('back').onclick = () => go(at - 1);
by('forward').onclick = () => go(at + 1);
by('start').onclick = () => go(0);
addEventListener('resize', measure);

// Highlights a page or leaf wherever it is shown.
function mark({page, leaf}) {
  for (const old of document.querySelectorAll('.lit')) old.classList.remove('lit');
  const same = page ? `[data-page="${page}"]` : `[data-leaf="${leaf}"]`;
  for (const one of document.querySelectorAll(same)) one.classList.add('lit');
  if (page) for (const one of document.querySelectorAll(`[data-leaf="${leaf}"]:not([data-page])`)) one.classList.add('lit');
}
function light(found) {
  const {page, leaf} = lit = {page: found.dataset.page, leaf: found.dataset.leaf};
  mark(lit);
  by('said').textContent = (page && data.pages[page]) || (leaf && `Leaf ${leaf.replace('book:', '')}.`) || '';
}
for (const kind of ['pointerover', 'focusin', 'click'])
  document.addEventListener(kind, event => {
    const found = event.target.closest && event.target.closest('main [data-page], main [data-leaf]');
    if (found) light(found);
  });

// The Tab key stops once at each picture; the arrow keys move inside it.
for (const picture of document.querySelectorAll('main figure > svg, main .book, main .leaves')) {
  const cells = [...picture.querySelectorAll('[data-page], [data-leaf]')];
  if (picture.tagName === 'svg') picture.setAttribute('role', 'group'), picture.querySelector('title')?.remove();
  cells.forEach((cell, i) => {
    cell.tabIndex = i ? -1 : 0;
    if (cell.tagName === 'TR') return;
    cell.setAttribute('role', 'img');
    const {page, leaf, place} = cell.dataset;
    cell.setAttribute('aria-label', [page && 'page ' + page, leaf && 'leaf ' + leaf.replace('book:', ''),
      cell.classList.contains('down') && 'upside down', cell.querySelector('small')?.textContent].filter(Boolean).join(', '));
  });
  picture.addEventListener('keydown', event => {
    const by = {ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1}[event.key], i = cells.indexOf(event.target);
    if (!by || i < 0 || !cells[i + by]) return;
    event.preventDefault();
    cells[i].tabIndex = -1, cells[i + by].tabIndex = 0;
    cells[i + by].focus();
  });
}
addEventListener('keydown', event => {
  if (event.altKey || event.ctrlKey || event.metaKey || event.defaultPrevented) return;
  if (event.target.closest && event.target.closest('input, svg, .book, .leaves, .scroll')) return;
  if (event.key === 'ArrowRight') go(at + 1);
  else if (event.key === 'ArrowLeft') go(at - 1);
});
for (const way of document.querySelectorAll('[name=way]'))
  way.onchange = () => { for (const one of document.querySelectorAll('[data-way]')) one.hidden = one.dataset.way !== way.value; };
measure();
)js";

} // namespace detail
} // namespace v0
} // namespace bifolium
