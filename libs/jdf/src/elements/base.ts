import {
  children,
  type ElementCodec,
  elementCodec,
  type Of,
  oneOf,
  optional,
  required,
  text,
  tokens,
  type ValueOf,
} from '../codec/index.js';
import { comment } from './part.js';

/** An identifier of another system's own, with what it is used for. */
export const generalId = elementCodec('GeneralID', {
  usage: required('IDUsage', text),
  value: required('IDValue', text),
  dataType: optional(
    'DataType',
    oneOf(['string', 'integer', 'double', 'NMTOKEN', 'boolean', 'dateTime', 'duration', 'NamedFeature']),
  ),
});
export type GeneralId = Of<typeof generalId>;

/** Attributes that every element of the standard may have. Source: the official JDF 1.9 schema (JDFCore, base element). */
export const baseAttributes = {
  descriptiveName: optional('DescriptiveName', text),
  commentUrl: optional('CommentURL', text),
  /** What to do with settings that cannot be kept, unless one of the lists names them. */
  settingsPolicy: optional('SettingsPolicy', oneOf(['BestEffort', 'MustHonor', 'OperatorIntervention'])),
  bestEffortExceptions: optional('BestEffortExceptions', tokens),
  mustHonorExceptions: optional('MustHonorExceptions', tokens),
  operatorInterventionExceptions: optional('OperatorInterventionExceptions', tokens),
};

/** Those attributes, and what nearly every element may contain. */
export const base = {
  ...baseAttributes,
  comment,
  generalIds: children(generalId),
};

/** An element with fields of its own and those that every element may carry. */
export function fullElement<F>(name: string, fields: F): ElementCodec<ValueOf<typeof base & F>> {
  return elementCodec<typeof base & F>(name, { ...base, ...fields });
}
