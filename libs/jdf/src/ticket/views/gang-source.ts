import { integerOrInfinity, nmtoken, optional, required, string } from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';

/** A job that shares a sheet with others, with its copies on it. */
export const gangSource = fullElement('GangSource', {
  jobId: required('JobID', string),
  copies: required('Copies', integerOrInfinity),
  assemblyId: optional('AssemblyID', nmtoken),
});
