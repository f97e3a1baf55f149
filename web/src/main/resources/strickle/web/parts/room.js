import {LitElement, html} from 'lit';
import {sheet, roomSheet} from './sheet.js';
import {Behind} from './behind.js';
import {Watching} from '../app/watching.js';
import {address} from '../app/address.js';
import {settings} from '../app/settings.js';
import {say} from '../app/words.js';

/**
 * What every room is: it is drawn again when the studio, the address or a setting changes, and it has
 * a title that takes focus when the room is entered. A room says `content()`, and may say `title` and
 * `actions()`, the buttons beside the title.
 */
export class Room extends LitElement {

  static styles = [sheet, roomSheet];

  #behind = new Behind(this);

  constructor() {
    super();
    new Watching(this, address, settings);
  }

  /** Its name, as in the address. */
  get name() {
    return this.localName.replace('s-room-', '');
  }

  /** What stands at its head and in the window's title. */
  get title() {
    return say(`rooms.${this.name}`);
  }

  /** What can be done at its head. */
  actions() {
    return '';
  }

  /** What is in it. */
  content() {
    return '';
  }

  /** Which of its views is asked for: another one's content comes a frame after its title. */
  get view() {
    return address.rest.join('/');
  }

  render() {
    return html`<header><h1 tabindex="-1">${this.title}</h1>${this.actions()}</header>${this.#behind.drawn(this.view, () => this.content())}`;
  }

  updated() {
    document.title = `${this.title} · ${say('shell.name')}`;
  }

  /** Leads a reader who came here by keyboard or ear to the title. */
  enter() {
    this.renderRoot.querySelector('h1')?.focus({preventScroll: true});
    window.scrollTo(0, 0);
  }
}

export {html};
