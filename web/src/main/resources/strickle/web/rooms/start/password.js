import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {ask} from '../../app/service.js';
import {studio} from '../../app/studio.js';
import {say} from '../../app/words.js';
import '../../parts/field.js';
import '../../parts/form.js';

/** Opens a studio by its name and password. */
class PasswordForm extends LitElement {

  static properties = {name: {state: true}, password: {state: true}};

  static styles = [sheet, css`:host { max-width: 28rem; margin-block-start: var(--s4); }`];

  constructor() {
    super();
    this.name = '';
    this.password = '';
  }

  render() {
    return html`<s-form label=${say('start.open')} .save=${() => this.#open()}>
      <s-field needed path="studio" label=${say('start.name')} .value=${this.name} @value=${event => (this.name = event.detail ?? '')}></s-field>
      <s-field needed path="password" kind="password" label=${say('start.password')} .value=${this.password} @value=${event => (this.password = event.detail ?? '')}></s-field>
    </s-form>`;
  }

  async #open() {
    await ask('POST', '/api/session', {body: {studio: this.name, password: this.password}});
    this.password = '';
    await studio.load();
  }
}

customElements.define('s-password', PasswordForm);
