/** Begins: the shell is drawn, and the studio is read at the same time. */

import './app/shell.js';
import {studio} from './app/studio.js';

studio.begin().catch(failed => studio.fail(failed));
