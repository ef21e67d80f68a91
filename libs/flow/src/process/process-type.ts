import type { Plan, PlanStep, Plant } from '#libs/craft';
import type { AttributeValues, XmlElement } from '#libs/jdf';
import type { Problem } from '#libs/kernel';
import type { Use } from '../state/ticket.js';

/** Every process of the standard that a step of a plan may name. */
export const processNames = [
  'Stripping',
  'Imposition',
  'Interpreting',
  'Rendering',
  'Screening',
  'ImageSetting',
  'ConventionalPrinting',
  'Cutting',
  'Creasing',
  'Folding',
  'Collecting',
  'Stitching',
  'Gathering',
  'SpinePreparation',
  'CoverApplication',
  'Trimming',
] as const;
export type ProcessName = (typeof processNames)[number];

/** Elements of the standard for what passes from one step to the next. */
export type ExchangeName = 'RunList' | 'ExposedMedia' | 'Component';

export type ResourceClass =
  | 'Parameter'
  | 'Intent'
  | 'Consumable'
  | 'Quantity'
  | 'Handling'
  | 'Implementation';

/** A resource of the ticket before it has its place in a document. */
export interface ResourceDraft {
  /** Unique within the ticket; its ID is made from it. */
  readonly key: string;
  /** Element name of the standard. */
  readonly name: string;
  readonly class: ResourceClass;
  /** Status of the standard; `Available` where left out. */
  readonly status?: string;
  /** Used by several nodes, so that it lies in the pool of the product node. */
  readonly shared: boolean;
  readonly attributes?: AttributeValues;
  readonly children?: readonly XmlElement[];
  /** What its children refer to, and therefore must be in the document too. */
  readonly refs?: readonly ResourceDraft[];
}

/** Partition keys with their values. */
export type PartKeys = Readonly<Record<string, string>>;

/** Amounts of a link, in the unit of its resource. */
export interface LinkAmount {
  readonly planned?: number;
  /** All that was good; with `waste` the actual amount. */
  readonly good?: number;
  readonly waste?: number;
  /** The part meant where a link holds amounts of several parts. */
  readonly part?: PartKeys;
}

/** How a node uses a resource. */
export interface LinkDraft {
  readonly resource: ResourceDraft;
  readonly usage: 'Input' | 'Output';
  /** ProcessUsage of the standard. */
  readonly role?: string;
  readonly parts?: readonly PartKeys[];
  readonly amounts?: readonly LinkAmount[];
  /** The least resource status that suffices, where that is not Available. */
  readonly minStatus?: string;
  readonly orientation?: string;
}

/** What a process is asked to describe: one step of a plan in its ticket. */
export interface StepScope {
  readonly plan: Plan;
  readonly step: PlanStep;
  /** What is known of the machines beyond the plan, e.g. sizes of plates; null where nobody can say. */
  readonly plant: Plant | null;
  /** What this step uses up. */
  readonly uses: readonly Use[];
  /** Addresses of the artwork. */
  readonly files: readonly string[];
  /** The ID that a resource with this key has in the document. */
  idOf(key: string): string;
}

/** How a process takes what a step before it made. */
export interface Taking {
  readonly role?: string;
  readonly parts?: readonly PartKeys[];
  readonly orientation?: string;
}

/**
 * One process of the standard: what a node of that type needs beside what comes from the steps before it and goes to
 * those after it. Adding a process is a file with one of these and a line in the index.
 */
export interface ProcessType {
  readonly name: ProcessName;
  /** How it takes an output of the step `from`; undefined when it does not take such a thing. */
  takes(name: ExchangeName, scope: StepScope, from: PlanStep): Taking | undefined;
  /** What it makes for the steps after it; null where its output stays within the node. */
  readonly makes: ExchangeName | null;
  /** Parameters, media and the like, with how the node uses them. */
  resources(scope: StepScope): readonly LinkDraft[];
  /** What must be in the plan before a node of this type may be sent to a device. */
  checks(plan: Plan, step: PlanStep): readonly Problem[];
}
