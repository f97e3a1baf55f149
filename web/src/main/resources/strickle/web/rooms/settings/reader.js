import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {Watching} from '../../app/watching.js';
import {settings} from '../../app/settings.js';
import {LOCALES, localeName} from '../../app/lists.js';
import {showMass, showTemperature, showVolume} from '../../app/units.js';
import {showMoney} from '../../app/money.js';
import {showMoment} from '../../app/times.js';
import {say} from '../../app/words.js';
import '../../parts/field.js';

/** What holds for whoever reads the page on this machine: units, theme, how things are written, who. */
class Reader extends LitElement {

  static styles = [sheet, css`
    .fields { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(15rem, 100%), 1fr)); gap: var(--s4); max-width: 60rem; align-items: start; margin-block: var(--s3); }
    h2 { margin-block-end: var(--s2); }
  `];

  constructor() {
    super();
    new Watching(this, settings);
  }

  render() {
    const choice = (name, value, options) => html`<s-field needed label=${say(`settings.${name}`)} .options=${options} .value=${value}
      @value=${event => (settings[name] = event.detail ?? '')}></s-field>`;
    const words = (...names) => names.map(name => ({value: name, label: say(`settings.${name}`)}));
    return html`<h2>${say('settings.here')}</h2><p>${say('settings.hereText')}</p>
      <div class="fields">
        ${choice('units', settings.units, words('metric', 'us'))}
        ${choice('theme', settings.theme, words('system', 'light', 'dark'))}
        <s-field needed label=${say('settings.locale')} hint=${say('settings.localeHint')} .options=${this.#locales()} .value=${settings.ownLocale}
          @value=${event => (settings.locale = event.detail ?? '')}></s-field>
        <s-field label=${say('settings.who')} hint=${say('settings.whoHint')} .value=${settings.who}
          .list=${(studio.book?.people ?? []).map(person => person.name)} @value=${event => (settings.who = event.detail ?? '')}></s-field>
      </div>
      <p class="quiet">${say('settings.example', {mass: showMass(2731), volume: showVolume(1180), temperature: showTemperature(18), money: showMoney(1234.5), day: showMoment(new Date())})}</p>`;
  }

  #locales() {
    const own = say('settings.localeOwn', {locale: navigator.language});
    return [{value: '', label: own}, ...[...new Set([...LOCALES, settings.ownLocale])].filter(tag => tag)
      .map(tag => ({value: tag, label: localeName(tag)})).sort((one, other) => one.label.localeCompare(other.label))];
  }
}

customElements.define('s-reader', Reader);
