import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {styled} from '../../parts/styled.js';
import {studio} from '../../app/studio.js';
import {say} from '../../app/words.js';
import {showMinutes} from '../../app/times.js';
import {showTemperature} from '../../app/units.js';

/** The course of one piece from pour to ready, at 20 °C and with nobody's hours in the way. */
class Timeline extends LitElement {

  static properties = {piece: {attribute: false}};

  static styles = [sheet, css`
    .line { display: flex; height: 30px; border: var(--border) solid var(--edge); }
    .line i { flex: 1 0 3px; border-inline-end: var(--border) solid var(--lime); }
    .set { background: var(--slate-2); }
    .cure { background: radial-gradient(var(--slate-2) 1.3px, transparent 1.6px) 0 0 / 7px 7px; }
    .dry { background: repeating-linear-gradient(0deg, transparent 0 4px, var(--slate-2) 4px 5.4px); }
    .rest { background: var(--lime-2); }
    .hands { background: var(--terracotta); }
    ol { padding-inline-start: 1.3em; }
    .key { display: inline-block; width: 24px; height: 12px; border: var(--border) solid var(--edge); vertical-align: -1px; margin-inline-end: var(--s2); }
  `];

  // Stretches of time: what happens and how many minutes it takes.
  get #course() {
    const {piece} = this;
    const [mould, mix] = [studio.find('moulds', piece.mould), studio.find('mixes', piece.mix)];
    if (!mould || !mix) {
      return [];
    }
    const pieces = (piece.typicalRun ?? 1) * (mould.cavities ?? 1);
    const castings = piece.typicalRun ?? 1;
    const course = [
      {kind: 'hands', what: say('shelf.pour'), minutes: castings * ((mould.prepMinutes ?? 0) + mould.pourMinutes) + mix.mixMinutes},
      {kind: 'set', what: say('shelf.c.set'), minutes: mould.setHours * 60},
      {kind: 'hands', what: say('shelf.demould'), minutes: castings * mould.demouldMinutes},
    ];
    for (const step of piece.route ?? []) {
      if (step.after?.hours > 0) {
        course.push({kind: step.after.wait, what: say(`shelf.c.${step.after.wait}`), minutes: step.after.hours * 60});
      }
      course.push({kind: 'hands', what: step.step || say('shelf.aStep'), minutes: (step.setupMinutes ?? 0) + pieces * (step.minutesEach ?? 0)});
    }
    if (piece.finalDryHours > 0) {
      course.push({kind: 'dry', what: say('shelf.c.dry'), minutes: piece.finalDryHours * 60});
    }
    return course;
  }

  render() {
    const course = this.#course;
    if (course.length === 0) {
      return html`<p class="quiet">${say('shelf.noCourse')}</p>`;
    }
    const all = course.reduce((sum, one) => sum + one.minutes, 0);
    const hands = course.filter(({kind}) => kind === 'hands').reduce((sum, one) => sum + one.minutes, 0);
    return html`<p>${say('shelf.course', {all: showMinutes(all), hands: showMinutes(hands), warm: showTemperature(20), count: this.piece.typicalRun ?? 1})}</p>
      <div class="line" aria-hidden="true">${course.map(one => html`<i class=${one.kind} style=${styled({'flex-grow': String(Math.max(1, one.minutes))})}></i>`)}</div>
      <ol>${course.map(one => html`<li><i class="key ${one.kind}" aria-hidden="true"></i>${one.what}: ${showMinutes(one.minutes)}</li>`)}</ol>`;
  }
}

customElements.define('s-shelf-timeline', Timeline);
