import {css, html} from 'lit';
import {Room} from '../../parts/room.js';
import {settings} from '../../app/settings.js';
import {studio} from '../../app/studio.js';
import {say} from '../../app/words.js';
import {tell} from '../../parts/undo.js';
import {currencies, zones} from '../../app/lists.js';
import '../../parts/field.js';
import '../../parts/form.js';
import './reader.js';
import './studio-file.js';
import './calendar.js';
import './door.js';

/** What the reader has chosen here, the studio's own data, the studio as a file, and leaving. */
class SettingsRoom extends Room {

  static properties = {draft: {state: true}};

  static styles = [...Room.styles, css`
    .fields { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(15rem, 100%), 1fr)); gap: var(--s4); max-width: 60rem; align-items: start; }
  `];

  constructor() {
    super();
    this.draft = null;
    this.base = null;
  }

  content() {
    return html`
      <s-reader .settings=${settings}></s-reader>
      <section><h2>${say('settings.studio')}</h2>${studio.book ? this.#studio() : html`<s-busy></s-busy>`}</section>
      <section><s-studio-file></s-studio-file></section>
      <section><s-calendar></s-calendar></section>
      <section><s-door></s-door></section>`;
  }

  #studio() {
    const value = this.draft ?? studio.book.studio;
    const change = part => {
      this.base ??= studio.book.studio;
      this.draft = {...value, ...part};
    };
    const field = (name, more) => html`<s-field short path=${name} needed label=${say(`settings.${more.word ?? name}`)} kind=${more.kind ?? 'text'}
      hint=${more.hint ? say(`settings.${more.hint}`) : ''} .options=${more.options} .least=${more.least}
      .value=${value[name]} @value=${event => change({[name]: event.detail})}></s-field>`;
    return html`<s-form draft="studio" .value=${this.draft} .base=${this.base} .save=${(mine = value, base = this.base ?? value) => studio.put('studio', mine, base)}
      @restore=${event => this.#restore(event.detail)} @restart=${this.#restart} @saved=${this.#saved}>
      <div class="fields">
        ${field('name', {})}
        ${field('currency', {options: currencies(value.currency), hint: 'currencyHint'})}
        ${field('timeZone', {options: zones(value.timeZone)})}
        ${field('batchLimitGrams', {word: 'batchLimit', kind: 'mass', least: 1})}
        ${field('wagePerHour', {word: 'wage', kind: 'money', least: 0})}
        ${field('overheadPerMonth', {word: 'overhead', kind: 'money', least: 0, hint: 'overheadHint'})}
        ${field('productiveHoursPerMonth', {word: 'productive', kind: 'hours', least: 0})}
      </div></s-form>`;
  }

  #restore({value, base}) {
    [this.draft, this.base] = [value, base];
  }

  #restart() {
    this.draft = this.base = null;
  }

  #saved(event) {
    this.#restart();
    tell(event.detail === 'kept' ? say('parts.kept') : say('settings.saved'), event.detail === 'sent');
  }
}

customElements.define('s-room-settings', SettingsRoom);
