import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {say, nameOf} from '../../app/words.js';
import {faultInWords} from '../../app/refused.js';
import {dayOf, moment, showMoment} from '../../app/times.js';
import {tell} from '../../parts/undo.js';
import {personName, runName} from './naming.js';

const KINDS = ['away', 'back', 'broken', 'mended', 'scrapped'];
/** What ends something that has come up. */
const ENDS = {away: 'back', broken: 'mended'};

/**
 * What has come up and does not stand on a task: who is away, what broke, what was lost. What is still
 * to end has a button for it, and what was noted by mistake is taken out. Event "note" with {how, about}.
 */
class CameUp extends LitElement {

  static properties = {day: {}, progress: {attribute: false}};

  static styles = [sheet, css`
    :host { margin-block-start: var(--s4); }
    ul { list-style: none; padding: 0; max-width: 46rem; }
    li { display: flex; flex-wrap: wrap; align-items: center; justify-content: space-between; gap: var(--s2) var(--s4); padding: var(--s2) 0; border-block-end: var(--border) solid var(--line); }
    button { min-height: var(--touch); }
  `];

  // What the plan already knows of is its history; what was noted since waits to be laid out.
  get #all() {
    const {away = [], broken = []} = studio.plan?.history ?? {};
    const known = [...away.map(one => ({kind: 'away', ...one})), ...broken.map(one => ({kind: 'broken', count: one.units.length, ...one}))];
    const noted = this.progress.filter(({kind}) => KINDS.includes(kind));
    return [...known.filter(one => !one.to || dayOf(one.to) >= this.day), ...noted];
  }

  render() {
    const all = this.#all;
    return all.length === 0 ? '' : html`<h2>${say('today.cameUp')}</h2><ul>${all.map(one => html`<li><span>${this.#words(one)}</span>
      <span class="row screen">${this.#isOpen(one) ? html`<button @click=${() => this.#end(one)}>${say(`today.${ENDS[one.kind]}`)}</button>` : ''}
        ${one.id ? html`<button aria-label=${say('today.takeOutOf', {what: this.#words(one)})} @click=${() => this.#remove(one)}>${say('today.takeOut')}</button>` : ''}</span></li>`)}</ul>`;
  }

  #isOpen(one) {
    return one.kind in ENDS && (!one.to || moment(one.to) > new Date()) && this.#left(one) > 0;
  }

  // How much of it lasts: one person, or the units of a form that nobody has noted as mended.
  #left(one) {
    const ends = this.progress.filter(({kind, person, form, from}) => kind === ENDS[one.kind] && person === one.person && form === one.form
      && moment(from) >= moment(one.from) && (!one.to || moment(from) <= moment(one.to)));
    return ends.reduce((left, {count = 1}) => left - count, one.count ?? 1);
  }

  #words(one) {
    const run = studio.plan.lots.flatMap(lot => lot.runs).find(({id}) => id === one.run);
    return say(`today.up_${one.kind}`, {
      person: one.person ? personName(one.person) : '', form: one.form ? nameOf(studio.book.forms, one.form) : '',
      run: run ? runName(run) : one.run ?? '', count: one.count ?? one.pieces ?? 1,
      from: one.from ? showMoment(one.from) : '', to: one.to ? showMoment(one.to) : say('today.notKnown'),
    });
  }

  #end(about) {
    this.dispatchEvent(new CustomEvent('note', {detail: {how: ENDS[about.kind], about: {...about, count: this.#left(about)}}}));
  }

  async #remove(one) {
    try {
      await studio.remove('progress', one);
      tell(say('today.takenOut'), true);
    } catch (refused) {
      tell(refused.faults?.length ? say('today.refused', faultInWords(refused.faults[0])) : refused.message);
    }
  }
}

customElements.define('s-came-up', CameUp);
