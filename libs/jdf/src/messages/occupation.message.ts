import { children, number, type Of, optional, requiredChild, text } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { device, employee } from '../elements/device.js';
import { part } from '../elements/part.js';
import { content, signal } from '../jmf/content.js';

const employeeDef = fullElement('EmployeeDef', { personalId: optional('PersonalID', text) });

/** What a person is busy with. */
const occupation = fullElement('Occupation', {
  /** Percent of the working time; 100 where left out. */
  busy: optional('Busy', number),
  jobId: optional('JobID', text),
  jobPartId: optional('JobPartID', text),
  queueEntryId: optional('QueueEntryID', text),
  employee: requiredChild(employee),
  devices: children(device),
  parts: children(part),
});
export type Occupation = Of<typeof occupation>;

/** Who works on what: the people of a plant and what each is busy with. */
export const occupationMessages = {
  QueryOccupation: content({ employees: children(employeeDef) }),
  SignalOccupation: signal({ employees: children(employeeDef), occupations: children(occupation) }),
  ResponseOccupation: content({ occupations: children(occupation) }),
};
