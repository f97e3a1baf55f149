import {Room, html} from '../../parts/room.js';
import {css, nothing} from 'lit';
import {studio} from '../../app/studio.js';
import {address, link} from '../../app/address.js';
import {laying} from '../../app/laying.js';
import {get, saveAs} from '../../app/service.js';
import {settings} from '../../app/settings.js';
import {say, sayList} from '../../app/words.js';
import {faultInWords} from '../../app/refused.js';
import {addDays, dayOf, moment, showDay, showLongDay, showMoment, showTime, showWork, toLocal} from '../../app/times.js';
import {Piecewise} from '../../parts/piecewise.js';
import {tell} from '../../parts/undo.js';
import {differs, doings, leftOver, minutesOn, nextDay, onDay, readyOn} from './day.js';
import {personName, runName} from './naming.js';
import '../../parts/menu.js';
import '../../parts/say.js';
import '../../parts/states.js';
import './card.js';
import './came-up.js';
import './care.js';
import './noting.js';

const MINUTE_MS = 60_000;

/** The day at the bench: who does what, in order, and what has become of it. */
class Today extends Room {

  static styles = [...Room.styles, css`
    .people { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(24rem, 100%), 1fr)); gap: var(--s4) var(--s5); align-items: start; margin-block-start: var(--s4); }
    .people section { margin: 0; }
    .ready-today h2 { margin-block-end: var(--s2); }
    .cards { display: grid; gap: var(--s3); }
    .ready-today { border-inline-start: var(--post) solid var(--moss); padding-inline-start: var(--s3); margin-block-start: var(--s4); }
    button, .button { min-height: var(--touch); }
    header { column-gap: var(--s2); }
    header h1 { flex: 1 1 14rem; } /* of a long day's name the second half gives way, not the last button */
    @media print { .people { display: block; } .people section { break-before: page; } .people section:first-child { break-before: auto; } }
  `];

  #pieces = new Piecewise(this, {first: 4, step: 6});
  #known = {of: [], all: []};

  get #now() {
    return new Date();
  }

  // Reckoned once while nothing of it has changed, so that a card is drawn anew only when its task is another.
  get #doings() {
    const of = [studio.plan, studio.progress, studio.book, Math.floor(this.#now / MINUTE_MS), settings.locale, settings.units];
    if (of.some((part, at) => part !== this.#known.of[at])) {
      this.#known = {of, all: doings(studio.plan, studio.progress, this.#now)};
    }
    return this.#known.all;
  }

  get #day() {
    const {day} = address.state;
    return /^\d{4}-\d\d-\d\d$/.test(day ?? '') ? day : dayOf(this.#now);
  }

  get view() {
    return this.#day;
  }

  get title() {
    return studio.book ? showLongDay(this.#day) : super.title;
  }

  #to(day) {
    return link('/today', {...address.state, day: day === dayOf(this.#now) ? undefined : day});
  }

  actions() {
    if (!studio.plan) {
      return '';
    }
    const day = this.#day;
    return html`<a class="button" href=${this.#to(addDays(day, -1))}>${say('today.earlier')}</a>
      <a class="button" href=${this.#to(addDays(day, 1))}>${say('today.later')}</a>
      <button @click=${this.#sheet}>${say('today.sheet')}</button>
      <button @click=${() => this.#noting.open({how: 'away'})}>${say('today.away')}</button>
      <button @click=${() => this.#noting.open({how: 'broken'})}>${say('today.broken')}</button>`;
  }

  get #noting() {
    return this.renderRoot.querySelector('s-noting');
  }

  async #sheet() {
    try {
      const {body} = await get(`/api/day-sheets.pdf?plan=in-use&day=${this.#day}`, {as: 'blob'});
      saveAs(body, `${this.#day}.pdf`);
    } catch (refused) {
      tell(refused.message);
    }
  }

  content() {
    if (!studio.book) {
      return html`<s-busy></s-busy>`;
    }
    if (!studio.plan) {
      return html`<s-empty heading=${say('today.noPlan')}><p>${say('today.noPlanText')}</p>
        <a slot="out" class="button do" href="/week">${say('today.toWeek')}</a></s-empty>`;
    }
    const all = this.#doings;
    const day = this.#day;
    const people = this.#people(all, day);
    const drawn = this.#pieces.drawn(day, Math.max(0, ...people.map(({doings: own}) => own.length)));
    return html`${this.#sentence(people, all, day)}${this.#again(all, day)}
      <div class="people" aria-busy=${this.#pieces.isWhole ? nothing : 'true'}>${people.map(({person, doings: own}) => this.#person(person, own.slice(0, drawn), day))}</div>
      ${this.#ready(day)}
      <s-came-up .day=${day} .progress=${studio.progress} @note=${event => this.#noting.open(event.detail)}></s-came-up>
      <s-care .day=${day}></s-care>
      <s-noting></s-noting>`;
  }

  #people(all, day) {
    const today = onDay(all, day);
    return studio.book.people
      .map(({id}) => ({person: id, doings: today.filter(({task}) => task.person === id)}))
      .filter(({doings: own}) => own.length > 0);
  }

  #sentence(people, all, day) {
    if (people.length === 0) {
      const next = nextDay(all, day);
      return html`<s-say>${next ? say('today.nothing', {next: showDay(next)}) : say('today.nothingMore')}
        ${next ? html`<a slot="out" href=${this.#to(next)}>${say('today.goTo', {next: showDay(next)})}</a>` : ''}</s-say>`;
    }
    const told = people.map(({person, doings: own}) => say('today.has', {
      person: personName(person), count: own.length, time: showTime(own[0].spells.find(({start}) => dayOf(start) === day).start),
      work: showWork(own.reduce((sum, doing) => sum + minutesOn(doing, day), 0)),
    }));
    const open = people.flatMap(({doings: own}) => own).filter(({state}) => state !== 'done').length;
    return html`<s-say kind=${open === 0 ? 'ready' : ''}>${open === 0 ? say('today.allDone') : say('today.sentence', {people: sayList(told)})}</s-say>`;
  }

  // What has happened and the plan no longer agree: say so, and offer the way out.
  #again(all, day) {
    const left = leftOver(all, dayOf(this.#now));
    if (!differs(all, studio.progress) || day !== dayOf(this.#now)) {
      return '';
    }
    return html`<s-say kind="care">${left.length > 0 ? say('today.leftOver', {count: left.length, since: showDay(left[0].start)}) : say('today.differs')}
      ${left.length > 0 ? html`<a slot="out" href=${this.#to(dayOf(left[0].start))}>${say('today.goTo', {next: showDay(left[0].start)})}</a>` : ''}
      <button slot="out" class="do" @click=${this.#layOut}>${say('today.layOut')}</button></s-say>`;
  }

  async #layOut() {
    try {
      await laying.replan({now: toLocal(this.#now)});
      address.go('/week');
    } catch (refused) {
      tell(refused.faults?.length ? say('today.refused', faultInWords(refused.faults[0])) : refused.message);
    }
  }

  #person(person, own, day) {
    return html`<section aria-labelledby="p-${person}"><h2 id="p-${person}">${personName(person)}</h2>
      <div class="cards">${own.map(doing => html`<s-task-card data-kind=${doing.task.kind} .doing=${doing} .day=${day} @note=${event => this.#noting.open(event.detail)}></s-task-card>`)}</div></section>`;
  }

  #ready(day) {
    const ready = readyOn(studio.plan, day);
    const runs = new Map(studio.plan.lots.flatMap(lot => lot.runs.map(run => [run.id, run])));
    return ready.length === 0 ? '' : html`<section class="ready-today" aria-labelledby="ready"><h2 id="ready">${say('today.ready')}</h2>
      <ul>${ready.sort((one, other) => moment(one.at) - moment(other.at)).map(({run, at}) => html`<li>${runName(runs.get(run))} <small>${run}</small>: ${showMoment(at)}</li>`)}</ul></section>`;
  }
}

customElements.define('s-room-today', Today);
