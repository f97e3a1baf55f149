import {LitElement, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {asking} from '../../app/latest.js';
import {all, get, post, remove, saveAs} from '../../app/service.js';
import {studio} from '../../app/studio.js';
import {showMoment} from '../../app/times.js';
import {say} from '../../app/words.js';
import {tell} from '../../parts/undo.js';
import {keptSheet} from './kept-sheet.js';
import '../../parts/dialog.js';
import '../../parts/field.js';
import '../../parts/form.js';

/** The states of the studio that are kept: keeping one, going back to one, saving one as a file, removing one. */
class Snapshots extends LitElement {

  static properties = {items: {state: true}, why: {state: true}, chosen: {state: true}, leaving: {state: true}, problem: {state: true}};

  static styles = [sheet, keptSheet];

  #asks = asking();

  constructor() {
    super();
    Object.assign(this, {items: null, why: '', chosen: null, leaving: null, problem: null});
    this.again = () => this.#read();
  }

  connectedCallback() {
    super.connectedCallback();
    studio.addEventListener('change', this.again);
    this.#read();
  }

  disconnectedCallback() {
    studio.removeEventListener('change', this.again);
    super.disconnectedCallback();
  }

  async #read() {
    const isLast = this.#asks();
    try {
      const items = await all('/api/snapshots');
      if (!isLast()) return;
      [this.items, this.problem] = [items, null];
    } catch (problem) {
      if (!isLast()) return;
      this.problem = problem;
    }
    await this.updateComplete;
    this.dispatchEvent(new Event('read')); // what stands below may come: it would have jumped
  }

  render() {
    return html`<h2 tabindex="-1">${say('history.snapshots')}</h2><p>${say('history.snapshotsText')}</p>
      ${this.problem ? html`<s-trouble .problem=${this.problem} @again=${this.again}></s-trouble>` : this.#list()}
      ${this.items ? this.#form() : ''}
      ${this.#asking()}${this.#askingToRemove()}`;
  }

  #form() {
    return html`<s-form label=${say('history.keep')} .save=${() => post('/api/snapshots', {why: this.why})} @saved=${this.#kept}>
        <s-field label=${say('history.why')} path="why" needed .value=${this.why} @value=${event => (this.why = event.detail ?? '')}></s-field>
      </s-form>`;
  }

  async #kept() {
    this.why = '';
    tell(say('history.kept'));
    await this.#read();
  }

  #list() {
    if (this.items === null) {
      return html`<s-busy></s-busy>`;
    }
    return this.items.length === 0 ? html`<p class="quiet">${say('history.noSnapshots')}</p>` : html`<ul>${this.items.map(item => html`<li>
      <span><b>${showMoment(item.at)}</b> ${item.why}</span>
      <button @click=${() => this.#save(item)}>${say('history.save')}</button>
      <button @click=${() => (this.chosen = item)}>${say('history.restore')}</button>
      <button aria-label=${say('history.removeOf', {at: showMoment(item.at)})} @click=${() => (this.leaving = item)}>${say('parts.remove')}</button></li>`)}</ul>`;
  }

  async #save(item) {
    const {body} = await get(`/api/snapshots/${item.id}`, {as: 'blob'});
    saveAs(body, `studio-${item.at.slice(0, 10)}.json`);
  }

  #asking() {
    const at = this.chosen ? showMoment(this.chosen.at) : '';
    return html`<s-dialog .open=${this.chosen !== null} heading=${say('history.restoreHeading', {at})} @close=${() => (this.chosen = null)}>
      <p>${say('history.restoreText')}</p>
      <button slot="foot" class="do" @click=${this.#restore}>${say('history.restore')}</button></s-dialog>`;
  }

  async #restore() {
    const {id, at} = this.chosen;
    this.chosen = null;
    try {
      await studio.act(`/api/snapshots/${id}/restore`);
      tell(say('history.restored', {at: showMoment(at)}), true);
    } catch (problem) {
      tell(problem.message);
    }
    await this.#read();
  }

  #askingToRemove() {
    const at = this.leaving ? showMoment(this.leaving.at) : '';
    return html`<s-dialog .open=${this.leaving !== null} heading=${say('history.removeHeading', {at})} @close=${() => (this.leaving = null)}>
      <p>${say('history.removeText')}</p>
      <button slot="foot" class="do" @click=${this.#remove}>${say('history.removeState')}</button></s-dialog>`;
  }

  async #remove() {
    const {id, at} = this.leaving;
    this.leaving = null;
    try {
      await remove(`/api/snapshots/${id}`);
      tell(say('history.stateRemoved', {at: showMoment(at)}));
      await this.#read();
      await this.updateComplete;
      this.renderRoot.querySelector('h2').focus(); // the button that was pressed is gone
    } catch (problem) {
      tell(problem.message);
      await this.#read();
    }
  }
}

customElements.define('s-snapshots', Snapshots);
