import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {get, put, saveAs} from '../../app/service.js';
import {studio} from '../../app/studio.js';
import {dayOf} from '../../app/times.js';
import {say} from '../../app/words.js';
import {tell} from '../../parts/undo.js';
import '../../parts/dialog.js';

/** The whole studio as one file: saving it, and putting one in its place. */
class StudioFile extends LitElement {

  static properties = {chosen: {state: true}, problem: {state: true}};

  static styles = [sheet, css`h2 { margin-block-end: var(--s2); } .links { margin-block-start: var(--s3); }`];

  constructor() {
    super();
    this.chosen = null;
    this.problem = null;
  }

  render() {
    return html`<h2>${say('settings.file')}</h2><p>${say('settings.fileText')}</p>
      <div class="row">
        <button @click=${this.#save}>${say('settings.save')}</button>
        <button @click=${() => this.renderRoot.querySelector('input').click()}>${say('settings.put')}</button>
        <input type="file" accept=".json,application/json" hidden @change=${this.#choose}>
      </div>
      ${this.problem ? html`<s-trouble .problem=${this.problem} @again=${() => (this.problem = null)}></s-trouble>` : ''}
      <p class="row links"><a href="/history">${say('settings.states')}</a><a href="/api/openapi.json">${say('settings.contract')}</a></p>
      <s-dialog .open=${this.chosen !== null} heading=${say('settings.putHeading', {name: this.chosen?.name ?? ''})} @close=${() => (this.chosen = null)}>
        <p>${say('settings.putText')}</p><button slot="foot" class="do" @click=${this.#put}>${say('settings.putDo')}</button></s-dialog>`;
  }

  async #save() {
    const {body} = await get('/api/export', {as: 'blob'});
    saveAs(body, `studio-${dayOf(new Date())}.json`);
  }

  #choose(event) {
    this.chosen = event.target.files[0] ?? null;
    event.target.value = '';
  }

  async #put() {
    const file = this.chosen;
    this.chosen = null;
    this.problem = null;
    try {
      const text = await file.text();
      if (!/^\s*\{/.test(text)) {
        throw new Error(say('settings.notJson'));
      }
      const {tag} = await get('/api/export');
      await put('/api/export', text, tag, {type: 'application/json'});
      await studio.load();
      tell(say('settings.putDone'), true);
    } catch (problem) {
      this.problem = problem;
    }
  }
}

customElements.define('s-studio-file', StudioFile);
