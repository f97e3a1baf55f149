import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {Watching} from '../../app/watching.js';
import {ask, get, saveAs} from '../../app/service.js';
import {showMoment} from '../../app/times.js';
import {say} from '../../app/words.js';
import {tell} from '../../parts/undo.js';

/** The plan in use in a calendar program: as a file, or by a secret address to subscribe to. */
class CalendarAddress extends LitElement {

  static properties = {since: {state: true}, address: {state: true}};

  static styles = [sheet, css`
    h2 { margin-block-end: var(--s2); }
    input { font: inherit; color: inherit; width: 100%; max-width: 46rem; min-height: 38px; padding: 0 var(--s2); background: var(--lime); border: var(--border) solid var(--edge); border-radius: var(--corner); }
  `];

  constructor() {
    super();
    this.since = null;
    this.address = '';
    new Watching(this);
  }

  async connectedCallback() {
    super.connectedCallback();
    this.since = (await get('/api/calendar-address')).body.since ?? '';
  }

  render() {
    return html`<h2>${say('settings.calendar')}</h2><p>${say('settings.calendarText')}</p>
      ${this.address ? html`<p><label>${say('settings.calendarAddress')} <input readonly .value=${this.address} @focus=${event => event.target.select()}></label></p>` : ''}
      ${this.since && !this.address ? html`<p>${say('settings.calendarSince', {at: showMoment(this.since)})}</p>` : ''}
      <div class="row">
        <button @click=${() => this.#do(() => this.#make())}>${say(this.since ? 'settings.calendarOther' : 'settings.calendarMake')}</button>
        ${this.since ? html`<button @click=${() => this.#do(() => this.#end())}>${say('settings.calendarEnd')}</button>` : ''}
        ${studio.plan ? html`<button @click=${() => this.#do(() => this.#save())}>${say('settings.calendarSave')}</button>` : ''}
      </div>`;
  }

  async #do(work) {
    try {
      await work();
    } catch (refused) {
      tell(refused.message);
    }
  }

  async #make() {
    this.address = (await ask('POST', '/api/calendar-address')).body.address;
    this.since = (await get('/api/calendar-address')).body.since;
    await this.updateComplete;
    this.renderRoot.querySelector('input').focus();
  }

  async #end() {
    await ask('DELETE', '/api/calendar-address');
    [this.since, this.address] = ['', ''];
    tell(say('settings.calendarEnded'));
  }

  async #save() {
    const {body} = await get('/api/calendar.ics?plan=in-use', {as: 'blob'});
    saveAs(body, 'week.ics');
  }
}

customElements.define('s-calendar', CalendarAddress);
