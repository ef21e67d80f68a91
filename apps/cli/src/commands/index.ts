import type { Command } from '../command.js';
import { check } from './check.command.js';
import { abort, hold, resume } from './command-ticket.js';
import { convert } from './convert.command.js';
import { device } from './device.command.js';
import { exportCommand } from './export.command.js';
import { plan } from './plan.command.js';
import { show } from './show.command.js';
import { start } from './start.command.js';
import { submit } from './submit.command.js';
import { tickets } from './tickets.command.js';
import { token } from './token.command.js';
import { watch } from './watch.command.js';

/** All commands, in the order they are listed. */
export const commands: readonly Command[] = [
  start,
  check,
  plan,
  convert,
  submit,
  tickets,
  show,
  watch,
  exportCommand,
  hold,
  resume,
  abort,
  device,
  token,
];
