import {LitElement, css, html, nothing} from 'lit';
import {sheet} from '../parts/sheet.js';
import {Piecewise} from '../parts/piecewise.js';
import {styled} from '../parts/styled.js';
import {say} from '../app/words.js';
import {showLongDay} from '../app/times.js';
import {swatchOf} from './colours.js';
import {amountOf, at, howLong, orderName, personName, pinOf, span, taskName} from './names.js';

const MINUTE_MS = 60_000;
/** About so many lines are drawn in one go. */
const LINES = 40;

/**
 * The same plan as a list: day by day what each person does, what becomes ready and what is due. For narrow
 * screens, and for whoever would rather read.
 *
 * Properties: week, from (minute), days. Event "open" {bar, node}.
 */
export class DayList extends LitElement {

  static properties = {week: {attribute: false}, from: {type: Number}, days: {type: Number}, find: {}};

  static styles = [sheet, css`
    section { margin-block-end: var(--s4); break-inside: avoid; content-visibility: auto; contain-intrinsic-block-size: auto 40rem; }
    h2 { font-size: var(--t3); position: sticky; inset-block-start: 0; background: var(--lime); padding-block: var(--s2); border-block-end: var(--border) solid var(--edge); }
    h3 { font-size: var(--t2); margin-block: var(--s3) var(--s1); }
    ul { list-style: none; padding: 0; }
    button { width: 100%; min-height: var(--touch); padding: var(--s2) var(--s3); margin-block-end: 4px; display: grid; grid-template-columns: 8.5rem 1fr; gap: 2px var(--s3); text-align: start; justify-content: start; align-items: baseline; background: var(--lime); border-color: var(--line); border-inline-start: 6px solid var(--mix, var(--slate)); }
    button.done { text-decoration: line-through; }
    .what { font-weight: 600; }
    .of { grid-column: 2; color: var(--slate-2); font-size: var(--t1); }
    .mark { margin-block: 4px; padding: var(--s1) var(--s3); border-inline-start: var(--post) solid var(--moss); }
    .mark.late { border-color: var(--oxide); font-weight: 600; }
    @media (max-width: 26rem) { button { grid-template-columns: 1fr; } .of { grid-column: 1; } }
    @media print { section { content-visibility: visible; } button { display: grid !important; min-height: 0; padding: 1mm 2mm; } }
  `];

  #pieces = new Piecewise(this, {first: 12, step: LINES});
  #read = {};

  constructor() {
    super();
    Object.assign(this, {week: null, from: 0, days: 7, find: ''});
  }

  render() {
    if (!this.week) return nothing;
    const days = this.#days();
    const drawn = this.#pieces.drawn(days, days.reduce((sum, {lines}) => sum + lines, 0));
    let before = 0;
    const seen = days.filter(({lines}) => (before += lines) - lines < drawn);
    return html`<div aria-busy=${this.#pieces.isWhole ? nothing : 'true'}>${seen.map(day => this.#day(day))}</div>`;
  }

  /** What is in each of the days; the same as long as it is asked for the same ones. */
  #days() {
    const {week, from, days} = this;
    const first = Math.max(0, week.days.findIndex(day => day.to > from));
    if (this.#read.week !== week || this.#read.first !== first || this.#read.count !== days) {
      this.#read = {week, first, count: days, days: week.days.slice(first, first + days).map(day => contentOf(week, day))};
    }
    return this.#read.days;
  }

  #day({day, due, hands, ready, isEmpty}) {
    return html`<section aria-label=${showLongDay(day.from * MINUTE_MS)}><h2>${showLongDay(day.from * MINUTE_MS)}</h2>
      ${isEmpty ? html`<p class="quiet">${say('board.idle')}</p>` : nothing}
      ${due.map(order => this.#due(order))}
      ${hands.map(({person, spells}) => html`<h3>${person.name}</h3><ul>${spells.map(spell => html`<li>${this.#spell(spell)}</li>`)}</ul>`)}
      ${ready.map(run => html`<div class="mark">${say('board.list.ready', {amount: amountOf(run), at: at(run.ready)})}</div>`)}
    </section>`;
  }

  #due(order) {
    const late = order.lateMinutes > 0;
    const words = say(late ? 'board.list.dueLate' : 'board.list.due', {order: orderName(order), late: howLong(order.lateMinutes)});
    return html`<div class="mark ${late ? 'late' : ''}">${words}</div>`;
  }

  #spell({task, from, to}) {
    const bar = {kind: 'task', id: task.id, task, run: task.run, lot: task.lot ?? task.run.lot, from, to, parts: []};
    const pinned = task.lot && pinOf(this.week, task.lot) ? ` · ${say('board.pinned')}` : '';
    return html`<button class=${task.done ? 'done' : ''} style=${styled({'--mix': swatchOf(bar.lot.mix)})} aria-label="${taskName(task)}, ${task.runs.map(amountOf).join(', ')}, ${personName(this.week, task.person)}, ${span(from, to)}${pinned}"
      @click=${event => this.dispatchEvent(new CustomEvent('open', {detail: {bar, node: event.currentTarget}}))}>
      <span>${span(from, to)}</span><span class="what">${taskName(task)}${pinned}</span><span class="of">${task.runs.map(amountOf).join('; ')}</span></button>`;
  }
}

/** What is due, done and ready on a day, and how many lines it takes to say so. */
function contentOf({people, tasks, runs, orders}, day) {
  const inDay = minute => minute >= day.from && minute < day.to;
  const ready = [...runs.values()].filter(run => inDay(run.ready));
  const due = orders.filter(order => order.planned && inDay(order.due));
  const hands = people.map(person => ({person, spells: spellsIn(tasks, person.id, day)})).filter(({spells}) => spells.length > 0);
  const lines = hands.reduce((sum, {spells}) => sum + spells.length, ready.length + due.length);
  return {day, due, hands, ready, isEmpty: lines === 0, lines: Math.max(1, lines)};
}

function spellsIn(tasks, person, day) {
  const mine = tasks.filter(task => task.person === person && task.to > day.from && task.from < day.to);
  return mine.flatMap(task => task.spells.filter(({from}) => from >= day.from && from < day.to).map(spell => ({...spell, task}))).sort((a, b) => a.from - b.from);
}

customElements.define('s-day-list', DayList);
