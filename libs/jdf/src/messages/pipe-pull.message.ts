import { pipeParams } from '../elements/pipe-params.js';
import { only } from '../jmf/content.js';
import { pipeAnswer } from '../jmf/pipe-answer.js';

/** The consumer of a pipe asks for more of the resource. */
export const pipePull = {
  CommandPipePull: only(pipeParams),
  ResponsePipePull: pipeAnswer,
  AcknowledgePipePull: pipeAnswer,
  RegistrationPipePull: only(pipeParams),
};
