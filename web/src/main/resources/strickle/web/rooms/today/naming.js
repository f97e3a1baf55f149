/** Tasks and runs in words of the shop. */

import {studio} from '../../app/studio.js';
import {say, sayList, nameOf} from '../../app/words.js';

/** "pour brick", "demould", or the words of the step. */
export function taskName({task, lot, run}) {
  if (task.kind === 'pour') {
    return say('today.pour', {mix: nameOf(studio.book.mixes, lot.mix)});
  }
  const step = task.kind === 'step' ? studio.find('pieces', run.piece)?.route[task.step - 1] : null;
  return step?.step ?? say(task.kind === 'step' ? 'today.aStep' : 'today.demould');
}

/** How many pieces a run gives. */
export function piecesOf(run) {
  const piece = studio.find('pieces', run.piece);
  return run.castings * (studio.find('moulds', piece?.mould)?.cavities ?? 1);
}

/** "8 × tealight cup, brick". */
export function runName(run) {
  return say('today.run', {count: piecesOf(run), piece: nameOf(studio.book.pieces, run.piece)});
}

/** "tray 1 and 2, core". */
export function formsOf(run) {
  return sayList((run.forms ?? []).map(({form, units}) => {
    const {name, count} = studio.find('forms', form) ?? {name: form, count: 1};
    return count > 1 ? say('today.units', {form: name, units: sayList(units.map(String))}) : name;
  }));
}

/** The name of a person. */
export function personName(id) {
  return nameOf(studio.book.people, id);
}
