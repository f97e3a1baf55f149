import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {say} from '../../app/words.js';
import {faultInWords} from '../../app/refused.js';
import {toLocal} from '../../app/times.js';
import {tell} from '../../parts/undo.js';
import {noteOf} from './day.js';
import {piecesOf, runName, taskName} from './naming.js';
import '../../parts/dialog.js';
import '../../parts/field.js';
import '../../parts/form.js';

/**
 * Asks for what a note of what has happened still needs, and keeps it. `open({doing, how})` for a
 * task, `open({how: 'away'})` and `open({how: 'broken'})` for what came up, `open({how: 'back', about})`
 * and `open({how: 'mended', about})` for its end.
 */
class Noting extends LitElement {

  static properties = {asked: {state: true}, note: {state: true}};

  static styles = [sheet, css`.fields { display: grid; gap: var(--s3); }`];

  constructor() {
    super();
    this.asked = null;
    this.note = {};
  }

  /** Notes at once what needs no question, or asks. */
  async open({doing = null, about = null, how}) {
    if (how === 'done' || how === 'begun') {
      await this.#keepTask(doing, how);
      return;
    }
    this.note = this.#first(doing ?? about, how);
    this.asked = {doing, how};
  }

  // Of a task, or for an end of what it ends.
  #first(of, how) {
    const now = toLocal(new Date());
    return {
      times: () => ({...noteOf(of.task), person: of.task.person, start: of.noted?.start ?? toLocal(of.start), end: now > toLocal(of.start) ? now : toLocal(of.end)}),
      scrapped: () => ({kind: 'scrapped', run: of.run.id, pieces: 1}),
      away: () => ({kind: 'away', person: studio.book.people[0]?.id, from: now, to: null}),
      broken: () => ({kind: 'broken', form: studio.book.forms[0]?.id, count: 1, from: now, to: null}),
      back: () => ({kind: 'back', person: of.person, from: now}),
      mended: () => ({kind: 'mended', form: of.form, count: of.count, from: now}),
    }[how]();
  }

  // As planned, or begun now: a tap, and a way to take it back.
  async #keepTask(doing, how) {
    const start = how === 'begun' ? toLocal(new Date()) : doing.noted?.start ?? toLocal(doing.start);
    const note = {...noteOf(doing.task), person: doing.task.person, start};
    if (how === 'done') {
      note.end = doing.noted ? toLocal(new Date()) : toLocal(doing.end);
    }
    try {
      await this.#keep(note);
      tell(say(how === 'done' ? 'today.noted' : 'today.notedBegun', {task: taskName(doing)}), true);
    } catch (refused) {
      tell(refused.faults?.length ? say('today.refused', faultInWords(refused.faults[0])) : refused.message);
    }
  }

  // What was begun and is noted again takes the place of its first note.
  async #keep(asked) {
    const note = Object.fromEntries(Object.entries(asked).filter(([, value]) => value !== null));
    const before = studio.progress.find(entry => entry.kind === note.kind && entry.lot === note.lot
      && entry.run === note.run && entry.step === note.step && ['poured', 'demoulded', 'step', 'scrapped'].includes(note.kind));
    return studio.put('progress', before?.id ? {...note, id: before.id} : note, before);
  }

  render() {
    const {asked} = this;
    return html`<s-dialog .open=${asked !== null} heading=${asked ? this.#heading() : ''} @close=${() => (this.asked = null)}>
      ${asked ? html`<s-form label=${say('today.keep')} .value=${this.note} .save=${() => this.#keep(this.note)} @saved=${this.#saved}>
        <div class="fields">${this.#fields()}</div></s-form>` : ''}</s-dialog>`;
  }

  #heading() {
    const {doing, how} = this.asked;
    return say(`today.ask_${how}`, {task: doing ? taskName(doing) : '', run: doing?.run ? runName(doing.run) : ''});
  }

  #saved() {
    this.asked = null;
    tell(say('today.kept'), true);
  }

  #set(name) {
    return event => (this.note = {...this.note, [name]: event.detail});
  }

  #field(name, more) {
    return html`<s-field ?needed=${!more.may} path=${name} label=${say(`today.field_${more.word ?? name}`)} kind=${more.kind ?? 'text'} .options=${more.options}
      .least=${more.least} .most=${more.most} hint=${more.hint ?? ''} .value=${this.note[name]} @value=${this.#set(name)}></s-field>`;
  }

  #fields() {
    const moments = {kind: 'moment'};
    const people = {options: studio.book.people.map(({id, name}) => ({value: id, label: name}))};
    const forms = {options: studio.book.forms.map(({id, name}) => ({value: id, label: name}))};
    const whole = (name, more) => this.#field(name, {kind: 'whole', least: 1, ...more});
    const {how, doing} = this.asked;
    return {
      times: () => [this.#field('person', people), this.#field('start', moments), this.#field('end', moments)],
      scrapped: () => [whole('pieces', {most: piecesOf(doing.run), hint: say('today.scrapHint')})],
      away: () => [this.#field('person', people), this.#field('from', moments), this.#field('to', moments)],
      back: () => [this.#field('person', people), this.#field('from', {...moments, word: 'since'})],
      broken: () => [this.#field('form', forms), whole('count'), this.#field('from', moments),
        this.#field('to', {...moments, may: true, word: 'backOn', hint: say('today.backOnHint')})],
      mended: () => [this.#field('form', forms), whole('count'), this.#field('from', {...moments, word: 'wholeFrom'})],
    }[how]();
  }
}

customElements.define('s-noting', Noting);
