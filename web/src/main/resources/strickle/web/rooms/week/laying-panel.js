import {LitElement, css, html, nothing} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {laying} from '../../app/laying.js';
import {say} from '../../app/words.js';
import {showMinutes, showMoment, showWork} from '../../app/times.js';
import {personName} from '../../board/names.js';
import {poursMoved} from '../../board/compare.js';
import '../../parts/states.js';

const MINUTE_MS = 60_000;

const ROWS = [
  ['late', totals => String(totals.lateOrders)],
  ['hands', totals => showWork(totals.attendedMinutes)],
  ['lots', totals => String(totals.lots)],
  ['last', totals => (totals.lastReady ? showMoment(totals.lastReady) : say('week.laying.none'))],
];

/**
 * How far a plan is and, when it is done, what it would change.
 *
 * Properties: outcome, present and next (weeks), looking, problem (why the outcome cannot be shown). Events "stop", "again", "accept", "drop", "look".
 */
export class LayingPanel extends LitElement {

  static properties = {outcome: {attribute: false}, present: {attribute: false}, next: {attribute: false}, looking: {type: Boolean}, told: {attribute: false}, problem: {attribute: false}};

  static styles = [sheet, css`
    :host { margin-block: var(--s3); padding: var(--s3) var(--s4); border: var(--border) solid var(--edge); border-radius: var(--corner); background: var(--lime-2); }
    h2 { font-size: var(--t3); margin-block-end: var(--s2); }
    progress { width: 100%; height: 10px; accent-color: var(--terracotta); }
    dl { display: flex; flex-wrap: wrap; gap: var(--s2) var(--s5); margin-block-end: var(--s3); }
    dt { font-size: var(--t1); color: var(--slate-2); }
    dd { margin: 0; }
    .other { font-weight: 600; }
    .other small { font-weight: 400; }
    ul { list-style: none; padding: 0; margin-block: 0; }
    li { margin-block: 2px; max-width: 80ch; }
    details { margin-block-end: var(--s3); }
    summary { cursor: pointer; min-height: 24px; }
    details ul { max-height: 14rem; overflow: auto; }
    @media print { :host { display: none; } }
  `];

  render() {
    const problem = laying.problem ?? this.problem;
    if (problem) return this.#trouble(problem);
    if (laying.plan?.state === 'failed') return this.#failed();
    return this.outcome.plan ? this.#done() : this.#running();
  }

  #trouble(problem) {
    return html`<s-trouble heading=${say(laying.problem ? 'week.laying.failed' : 'week.laying.notShown')} .problem=${problem} @again=${() => this.#tell('again')}></s-trouble>
      <button @click=${() => this.#tell('drop')}>${say('week.laying.dismiss')}</button>`;
  }

  #failed() {
    return html`<h2>${say('week.laying.failed')}</h2><p role="alert">${laying.plan.why ?? ''}</p><button @click=${() => this.#tell('drop')}>${say('week.laying.dismiss')}</button>`;
  }

  #running() {
    const progress = laying.plan?.progress;
    const asked = laying.plan?.asked?.seconds ?? 10;
    return html`<h2>${say('week.laying.title')}</h2>
      <progress max=${asked} .value=${Math.min(asked, progress?.elapsedSeconds ?? 0)} aria-label=${say('week.laying.title')}></progress>
      <p role="status">${progress ? say('week.laying.best', totalsWords(progress)) : say('week.laying.waiting')}</p>
      <p class="quiet">${progress ? say('week.laying.running', {elapsed: progress.elapsedSeconds.toFixed(0), count: progress.schedules}) : nothing} ${this.#first(progress)}</p>
      <div class="row"><button ?disabled=${!progress} @click=${() => this.#tell('stop')}>${say('week.laying.stop')}</button>
        ${this.present ? html`<small>${say('week.laying.stays')}</small>` : nothing}</div>`;
  }

  /** What the first way found came to, once a better one is known. */
  #first(progress) {
    const {first} = this.outcome;
    const same = !first || !progress || (first.weightedLateHours === progress.weightedLateHours && first.attendedMinutes === progress.attendedMinutes);
    return same ? nothing : say('week.laying.first', totalsWords(first));
  }

  #done() {
    return html`<h2 id="done" tabindex="-1">${say('week.laying.doneTitle')}</h2>
      ${this.looking ? html`<p role="status">${say('week.laying.looking')}</p>` : nothing}
      ${this.#totals()}${this.present && this.next ? this.#moves() : nothing}
      <div class="row"><button class="do" @click=${() => this.#tell('accept')}>${say('week.laying.accept')}</button>
        ${this.present ? html`<button aria-pressed=${this.looking} @click=${() => this.#tell('look')}>${say(this.looking ? 'week.laying.lookBack' : 'week.laying.look')}</button>
        <button @click=${() => this.#tell('drop')}>${say('week.laying.drop')}</button>` : nothing}</div>`;
  }

  #totals() {
    const next = this.outcome.plan.totals;
    const present = this.present?.totals;
    return html`<dl>${ROWS.map(([name, show]) => html`<div><dt>${say(`week.laying.row.${name}`)}</dt>
      <dd class=${present && show(present) !== show(next) ? 'other' : ''}>${show(next)}${present ? html` <small>${say('week.laying.was', {was: show(present)})}</small>` : nothing}</dd></div>`)}</dl>`;
  }

  #moves() {
    const orders = this.#orderLines();
    const pours = poursMoved(this.present, this.next);
    if (orders.length + pours.length === 0) return html`<p>${say('week.laying.nothingMoves')}</p>`;
    const lines = [...this.#thawed(), ...pours.map(move => this.#pourLine(move))];
    return html`<ul>${orders.map(line => html`<li>${line}</li>`)}</ul>
      <details><summary>${say('week.laying.pours', {count: pours.length})}</summary><ul tabindex="0">${lines.map(line => html`<li>${line}</li>`)}</ul></details>`;
  }

  #orderLines() {
    return (this.outcome.comparison?.orders ?? []).filter(({minutes}) => minutes !== 0).map(({order, after, minutes}) => (
      say(minutes > 0 ? 'week.laying.orderLater' : 'week.laying.orderEarlier', {order, by: showMinutes(minutes), at: showMoment(after)})));
  }

  #thawed() {
    return (laying.plan?.thawed ?? []).map(({task, reason}) => say('week.laying.thawed', {task, reason}));
  }

  #pourLine({piece, pieces, before, after}) {
    const key = !after ? 'pourGone' : before ? 'pourMoves' : 'pourNew';
    const at = casting => (casting ? showMoment(casting.from * MINUTE_MS) : '');
    return say(`week.laying.${key}`, {
      amount: say('board.amount', {count: pieces, piece: piece.name}), after: at(after), before: at(before),
      person: after ? personName(this.next, after.person) : '', wasPerson: before ? personName(this.present, before.person) : '',
    });
  }

  #tell(name) {
    this.dispatchEvent(new CustomEvent(name));
  }
}

function totalsWords({weightedLateHours, attendedMinutes}) {
  const late = weightedLateHours > 0 ? say('week.laying.lateHours', {count: weightedLateHours}) : say('week.laying.nothingLate');
  return {late, hands: showWork(attendedMinutes)};
}

customElements.define('s-laying', LayingPanel);
