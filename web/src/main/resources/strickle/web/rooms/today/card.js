import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {say} from '../../app/words.js';
import {showMass} from '../../app/units.js';
import {dayOf, showMinutes, showMoment, showSpan, showTime} from '../../app/times.js';
import {minutesOn, waitAfter} from './day.js';
import {formsOf, personName, runName, taskName} from './naming.js';
import './weigh.js';

/**
 * One task on one card, as large as a phone. Events: "note" with {doing, how}: "done", "times",
 * "begun" or "scrapped".
 */
class Card extends LitElement {

  static properties = {doing: {attribute: false}, day: {}};

  static styles = [sheet, css`
    :host { content-visibility: auto; contain-intrinsic-block-size: auto 10rem; border: var(--border) solid var(--line); border-inline-start: var(--post) solid var(--slate-2); background: var(--lime-2); padding: var(--s3) var(--s4); border-radius: var(--corner); }
    :host([data-kind="pour"]) { contain-intrinsic-block-size: auto 32rem; }
    :host([data-state="done"]) { border-inline-start-color: var(--moss); }
    :host([data-state="overdue"]) { border-inline-start-color: var(--ochre); }
    header { display: flex; flex-wrap: wrap; align-items: baseline; gap: 0 var(--s3); }
    header .time { font-variant-numeric: var(--figures); font-weight: 600; }
    header h3 { margin: 0; }
    header .state { margin-inline-start: auto; }
    ul { list-style: none; padding: 0; margin: var(--s2) 0; }
    .waits { color: var(--slate-2); }
    .ballast { font-size: var(--t3); border: 2px solid var(--edge); padding: var(--s2) var(--s3); margin-block: var(--s2); }
    .acts { display: flex; flex-wrap: wrap; gap: var(--s2); margin-block-start: var(--s3); }
    .acts button { min-height: var(--touch); }
    .paper { display: none; }
    @media print {
      :host { content-visibility: visible; break-inside: avoid; background: none; }
      .paper { display: inline-block; width: 16px; height: 16px; border: 2px solid; vertical-align: -3px; margin-inline-end: var(--s2); }
    }
  `];

  updated() {
    this.dataset.state = this.doing.state;
  }

  render() {
    const {doing} = this;
    const spell = doing.spells.find(({start}) => dayOf(start) === this.day) ?? doing.spells[0];
    return html`<header><span class="time"><span class="paper" aria-hidden="true"></span>${showSpan(spell.start, spell.end)}</span>
        <h3>${taskName(doing)}</h3> <small>${showMinutes(minutesOn(doing, this.day))}</small>${this.#state()}</header>
      ${doing.task.kind === 'pour' ? this.#pour() : html`<ul><li>${runName(doing.run)} <small>${doing.run.id}</small></li></ul>${this.#waits()}`}
      ${this.#acts()}`;
  }

  #state() {
    const {state, noted} = this.doing;
    if (state === 'to-do') {
      return '';
    }
    const kind = {done: 'ready', begun: '', overdue: 'care'}[state];
    return html`<span class="state ${kind}">${noted?.end
      ? say('today.doneAt', {from: showTime(noted.start), to: showTime(noted.end)}) : say(`today.state_${state}`)}</span>`;
  }

  #pour() {
    const {lot} = this.doing;
    return html`<ul>${lot.runs.map(run => html`<li>${runName(run)} <small>${say('today.into', {forms: formsOf(run), run: run.id})}</small></li>`)}</ul>
      <s-weigh .lot=${lot} .day=${this.day}></s-weigh>
      ${lot.runs.filter(run => run.ballastGramsEach > 0).map(run => html`<p class="ballast">${say('today.ballast', {mass: showMass(run.ballastGramsEach), piece: runName(run), count: run.castings})}</p>`)}
      ${this.#waits()}`;
  }

  #waits() {
    const waits = waitAfter(studio.plan, this.doing);
    return waits.length === 0 ? '' : html`<ul class="waits">${waits.map(wait => html`<li>${say(`today.wait_${wait.kind}`, {until: showMoment(wait.to), run: wait.run})}</li>`)}</ul>`;
  }

  #acts() {
    const {state, task, run} = this.doing;
    if (task.done) {
      return '';
    }
    const noted = state === 'done';
    return html`<div class="acts screen">
      ${noted ? '' : html`<button class="do" @click=${() => this.#note('done')}>${say('today.done')}</button>`}
      ${noted || state === 'begun' ? '' : html`<button @click=${() => this.#note('begun')}>${say('today.begin')}</button>`}
      ${noted ? '' : html`<button @click=${() => this.#note('times')}>${say('today.otherTimes')}</button>`}
      ${run && (noted || task.kind !== 'pour') ? html`<button @click=${() => this.#note('scrapped')}>${say('today.scrap')}</button>` : ''}
    </div>`;
  }

  #note(how) {
    this.dispatchEvent(new CustomEvent('note', {detail: {doing: this.doing, how}}));
  }
}

export {personName};
customElements.define('s-task-card', Card);
