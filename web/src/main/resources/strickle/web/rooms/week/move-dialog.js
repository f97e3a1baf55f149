import {LitElement, html, nothing} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {say} from '../../app/words.js';
import {showMinutes} from '../../app/times.js';
import {localMinute} from '../../board/clock.js';
import {at, personName} from '../../board/names.js';
import {placeFor} from '../../board/pinning.js';
import '../../parts/dialog.js';
import '../../parts/field.js';
import '../../parts/form.js';

/**
 * Pinning a pour without dragging: a time and a person.
 *
 * Properties: week, lot (null closes it). Events "pin" {lot, start, person}, "close".
 */
export class MoveDialog extends LitElement {

  static properties = {week: {attribute: false}, lot: {attribute: false}, start: {state: true}, person: {state: true}};

  static styles = sheet;

  willUpdate(changed) {
    if (!changed.has('lot') || !this.lot) return;
    this.start = this.week.local(this.lot.pour.from);
    this.person = this.lot.pour.person;
  }

  render() {
    const {lot} = this;
    return html`<s-dialog .open=${Boolean(lot)} heading=${lot ? say('week.pins.title', {mix: lot.mix.name}) : ''} @close=${this.#closed}>
      ${lot ? this.#form(lot) : nothing}</s-dialog>`;
  }

  #form(lot) {
    const place = this.#place();
    return html`<p>${say('week.pins.lead', {minutes: showMinutes(lot.pour.to - lot.pour.from)})}</p>
      <s-form .save=${() => this.#save()} label=${say('week.pins.save')}>
        <s-field kind="moment" path="start" needed label=${say('week.pins.start')} .value=${this.start} @value=${event => (this.start = event.detail ?? '')}></s-field>
        <s-field path="person" needed label=${say('week.pins.person')} .value=${this.person} @value=${event => (this.person = event.detail)}
          .options=${this.week.people.map(({id, name}) => ({value: id, label: name}))}></s-field>
        <p role="status">${place === null ? nothing : place.fits ? say('week.pins.wouldBe', {at: at(place.start)}) : say('week.pins.never', {person: personName(this.week, this.person)})}</p>
      </s-form>`;
  }

  #place() {
    return /^\d{4}-\d\d-\d\dT\d\d:\d\d/.test(this.start ?? '') ? placeFor(this.week, this.lot, localMinute(this.start, this.week.zone), this.person, 1) : null;
  }

  async #save() {
    const place = this.#place();
    if (!place?.fits) return;
    const {lot} = this;
    this.dispatchEvent(new CustomEvent('pin', {detail: {lot, start: place.start, person: place.person}}));
    this.#closed();
  }

  #closed() {
    this.dispatchEvent(new CustomEvent('close'));
  }
}

customElements.define('s-move-pour', MoveDialog);
