import {Directive, PartType, directive} from 'lit/directive.js';
import {noChange} from 'lit';

/**
 * Styles that depend on data, set one by one through the element's own object: the page's policy
 * refuses style attributes, and Lit's styleMap writes one when an element is first drawn.
 *
 * `<i style=${styled({width: `${share}%`})}></i>`
 */
class Styled extends Directive {

  #names = new Set();

  constructor(part) {
    super(part);
    if (part.type !== PartType.ATTRIBUTE || part.name !== 'style' || part.strings?.length > 2) {
      throw new Error('styled() stands for the whole of a style attribute.');
    }
  }

  render() {
    return noChange;
  }

  update({element}, [styles]) {
    for (const name of this.#names) {
      if (!(name in styles)) {
        element.style.removeProperty(name);
      }
    }
    for (const [name, value] of Object.entries(styles)) {
      element.style.setProperty(name, value);
    }
    this.#names = new Set(Object.keys(styles));
    return noChange;
  }
}

/** @param {Object<string, string>} styles by their names in CSS, also custom properties */
export const styled = directive(Styled);
