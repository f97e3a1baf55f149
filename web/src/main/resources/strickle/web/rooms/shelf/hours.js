import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {say} from '../../app/words.js';
import {windowsOf} from './parts.js';
import '../../parts/field.js';

const DAYS = ['MON', 'TUE', 'WED', 'THU', 'FRI', 'SAT', 'SUN'];

/** Somebody's hours in a usual week, a line for each day. */
class Hours extends LitElement {

  static properties = {value: {attribute: false}};

  static styles = [sheet, css`
    fieldset { border: var(--border) solid var(--line); padding: var(--s3); margin: 0; min-width: 0; display: grid; grid-template-columns: repeat(auto-fill, minmax(min(15rem, 100%), 1fr)); gap: var(--s3) var(--s4); }
    legend { font-weight: 600; padding: 0 var(--s2); }
    small { grid-column: 1 / -1; }
  `];

  render() {
    return html`<fieldset><legend>${say('shelf.f.hours')}</legend><small>${say('shelf.h.windows')}</small>
      ${DAYS.map(day => html`<s-field plain path="hours.${day}" label=${say(`shelf.days.${day}`)} .value=${(this.value[day] ?? []).join(', ')} @value=${event => this.#set(day, windowsOf(event.detail))}></s-field>`)}</fieldset>`;
  }

  #set(day, windows) {
    const {[day]: before, ...others} = this.value;
    this.value = windows.length > 0 ? {...others, [day]: windows} : others;
    this.dispatchEvent(new CustomEvent('value', {detail: this.value}));
  }
}

customElements.define('s-shelf-hours', Hours);
