import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { z } from 'zod';
import { defaultXmlLimits, greatestDepth } from '#libs/jdf';

/** A list in one variable: commas between, blanks around them ignored. */
const list = z.string().transform((text) =>
  text
    .split(',')
    .map((part) => part.trim())
    .filter((part) => part !== ''),
);

/** A number in words that say what it must be. */
const number = (what: string, fits: (value: number) => boolean) =>
  z
    .string()
    .transform(Number)
    .refine((value) => Number.isFinite(value) && fits(value), { message: `must be ${what}` });
const wholePort = (value: number): boolean => Number.isInteger(value) && value >= 0 && value <= 65535;
const url = (...schemes: readonly string[]) =>
  z.string().refine((text) => URL.canParse(text) && schemes.includes(new URL(text).protocol), {
    message: `must be a URL that starts with ${schemes.map((s) => `${s}//`).join(' or ')}`,
  });
const flag = z.enum(['0', '1'], { message: 'must be 0 or 1' }).transform((text) => text === '1');

const count = (usual: number) =>
  number('a whole number above 0', (value) => Number.isInteger(value) && value > 0).prefault(String(usual));

const isDepth = (value: number): boolean => Number.isInteger(value) && value > 0 && value <= greatestDepth;

/** Every setting: name without the prefix, how it is read, what it is when not given. docs/settings.md is made from it. */
export const settingTypes = {
  PORT: number('a whole number from 0 to 65535', wholePort).prefault('7420'),
  HOST: z.string().min(1).default('127.0.0.1'),
  DATA_DIR: z
    .string()
    .min(1)
    .default('./.sidelay')
    .transform((path) => resolve(path)),
  DATABASE_URL: url('postgres:', 'postgresql:').optional(),
  QUEUE_URL: url('redis:', 'rediss:', 'postgres:', 'postgresql:').optional(),
  MQTT_URL: url('mqtt:', 'mqtts:').optional(),
  PUBLIC_URL: url('http:', 'https:').optional(),
  ROLE: z.enum(['all', 'hub', 'worker'], { message: 'must be all, hub or worker' }).default('all'),
  PLANT: z.string().min(1).optional(),
  INBOX: z.string().min(1).optional(),
  FILE_ROOTS: list.default([]),
  ALLOWED_HOSTS: list.default([]),
  DEVICE_ID: z
    .string()
    .regex(/^[A-Za-z0-9._-]+$/, 'must be letters, digits, dot, dash or underscore')
    .default('sidelay'),
  DEMO: flag.default(false),
  /** 60 with DEMO; given alone, plant time runs at this speed without the simulated plant. */
  DEMO_SPEED: number('more than 0 and at most 100,000', (value) => value > 0 && value <= 100_000).optional(),
  BODY_LIMIT_MB: number('more than 0 and at most 1,024', (value) => value > 0 && value <= 1024).prefault(
    '16',
  ),
  /** What one XML document may have; README, "Access". */
  XML_DEPTH: number(`a whole number from 1 to ${greatestDepth}`, isDepth).prefault(
    String(defaultXmlLimits.depth),
  ),
  XML_ELEMENTS: count(defaultXmlLimits.elements),
  /** Elements of one message: unlike a ticket it is understood on the thread that serves, about 8 µs an element. */
  MESSAGE_ELEMENTS: count(20_000),
  XML_NODES: count(defaultXmlLimits.nodes),
  XML_ATTRIBUTES: count(defaultXmlLimits.attributesPerElement),
  XML_ATTRIBUTE_LENGTH: count(defaultXmlLimits.attributeLength),
  XML_NAME_LENGTH: count(defaultXmlLimits.nameLength),
  XML_REFERENCES: count(defaultXmlLimits.references),
  XML_TEXT_LENGTH: count(defaultXmlLimits.textLength),
  /** What reading, checking and planning one document may cost: seconds, more of them a megabyte, and memory. */
  READ_SECONDS: number('more than 0', (value) => value > 0).prefault('5'),
  READ_SECONDS_PER_MB: number('0 or more', (value) => value >= 0).prefault('1'),
  READ_MEMORY_MB: number('at least 64', (value) => value >= 64).prefault('512'),
  TLS_CERT: z.string().optional(),
  TLS_KEY: z.string().optional(),
  CLIENT_CA: z.string().optional(),
  TRUSTED_PROXY: z.string().optional(),
  OIDC_ISSUER: z.string().optional(),
  OIDC_CLIENT_ID: z.string().optional(),
  LOG_LEVEL: z
    .enum(['debug', 'info', 'warn', 'error'], { message: 'must be debug, info, warn or error' })
    .default('info'),
} as const;

const schema = z.object(settingTypes);

export type Settings = z.infer<typeof schema>;

/** Promised for later versions: said, so that nobody relies on them. */
const NOT_USED_YET = ['MQTT_URL', 'OIDC_ISSUER', 'OIDC_CLIENT_ID'] as const;

/** Not settings of the server: read by the tests and by the command line. */
const others = /^SIDELAY_(TEST_|STANDARDS_DIR$|CHECKDATA_DIR$|REQUIRE_SERVICES$|SERVER$|TOKEN$)/;

export interface SettingsReading {
  readonly settings: Settings | null;
  /** One clear sentence for each wrong setting. Never its value: it may be a secret. */
  readonly errors: readonly string[];
  readonly warnings: readonly string[];
}

/**
 * Reads the environment once. `NAME_FILE` names a file that holds the value of `NAME`, for secrets. Unknown `SIDELAY_*`
 * names are warned of, for they are most often misspelt.
 */
export function readSettings(env: Readonly<Record<string, string | undefined>>): SettingsReading {
  const errors: string[] = [];
  const warnings: string[] = [];
  const given: Record<string, string> = {};
  for (const [name, value] of Object.entries(env)) {
    if (!name.startsWith('SIDELAY_') || others.test(name) || value === undefined || value === '') continue;
    const key = name.slice('SIDELAY_'.length);
    if (key in settingTypes) given[key] = value;
    else if (key.endsWith('_FILE') && key.slice(0, -5) in settingTypes) {
      try {
        given[key.slice(0, -5)] = readFileSync(value, 'utf8').trim();
      } catch {
        errors.push(`${name}: the file it names can't be read`);
      }
    } else warnings.push(`${name} is no setting of Sidelay and was ignored${guess(key)}`);
  }
  for (const key of NOT_USED_YET) {
    if (key in given) warnings.push(`SIDELAY_${key} is known, but this version makes no use of it yet`);
  }
  const reading = schema.safeParse(given);
  if (reading.success && errors.length === 0) return { settings: reading.data, errors, warnings };
  for (const issue of reading.error?.issues ?? []) {
    errors.push(`SIDELAY_${String(issue.path[0])}: ${issue.message}`);
  }
  return { settings: null, errors, warnings };
}

/** The known name that shares most of its letters' order with a misspelt one. */
function guess(key: string): string {
  const near = Object.keys(settingTypes).find(
    (name) => name.replaceAll('_', '') === key.replaceAll('_', '') || sharesStart(name, key),
  );
  return near === undefined ? '' : `; did you mean SIDELAY_${near}?`;
}

function sharesStart(a: string, b: string): boolean {
  let same = 0;
  while (same < a.length && a[same] === b[same]) same++;
  return same >= 4 && same >= Math.min(a.length, b.length) - 2;
}
