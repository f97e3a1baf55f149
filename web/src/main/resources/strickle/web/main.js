/** Begins: the shell is drawn, and the studio is read at the same time. */

import './app/shell.js';
import {forgetAsked} from './app/asked.js';
import {laying} from './app/laying.js';
import {studio} from './app/studio.js';

studio.begin().finally(forgetAsked).then(() => laying.resume(), failed => studio.fail(failed));
