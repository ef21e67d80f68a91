import { locateYaml, readYaml } from './read-yaml.js';

const plant = `# A plant
presses:
  - id: press-1
    planSpeedPerHour:
      "80": 12000
  - id: press-2
defaults: { stock: silk-135, bleedMm: 3 }
`;

describe('a plant file in YAML', () => {
  it('becomes plain data', () => {
    expect(readYaml(plant)).toEqual({
      ok: true,
      problems: [],
      value: {
        presses: [{ id: 'press-1', planSpeedPerHour: { '80': 12000 } }, { id: 'press-2' }],
        defaults: { stock: 'silk-135', bleedMm: 3 },
      },
    });
  });

  // YAML 1.2.2, section 10.2.1 (JSON schema) and 10.3.2 (core schema): no "yes", "on" or sexagesimal numbers.
  it('is read by the core schema, where "no" and "22:30" are texts', () => {
    expect(readYaml('a: no\nb: 22:30\nc: 0o17\nd: true\ne: ~')).toMatchObject({
      value: { a: 'no', b: '22:30', c: 15, d: true, e: null },
    });
  });

  it.each<[string, string, number | null]>([
    ['a key given twice', 'a: 1\nb: 2\na: 3\n', 3],
    ['a bracket left open', 'a: 1\nb: [1, 2\n', 3],
    ['a tab as indentation', 'a:\n\tb: 1\n', 2],
    ['an unknown tag', 'a: 1\nb: !secret x\n', 2],
    ['two documents', 'a: 1\n---\nb: 2\n', 2],
    ['an alias without its anchor', 'a: 1\nb: *gone\n', 2],
  ])('is refused with its line for %s', (_what, text, line) => {
    expect(readYaml(text)).toMatchObject({ ok: false, problems: [{ code: 'PLANT_DEFINITION', line }] });
  });

  it('is refused when its aliases unfold without end', () => {
    let text = 'a0: &a0 [x, x, x, x, x, x, x, x, x]\n';
    for (let i = 1; i < 9; i++)
      text += `a${i}: &a${i} [${Array(9)
        .fill(`*a${i - 1}`)
        .join(', ')}]\n`;
    expect(readYaml(text)).toMatchObject({ ok: false, problems: [{ code: 'PLANT_DEFINITION' }] });
  });

  it('cannot reach the prototype of objects', () => {
    const read = readYaml('__proto__: { polluted: true }\nconstructor: 1\n');
    expect(Object.hasOwn({}, 'polluted') || 'polluted' in {}).toBe(false);
    expect(read.ok).toBe(true);
  });

  it('says on which line a value is written, or else what it would belong to', () => {
    expect(locateYaml(plant, ['presses', 1, 'id'])).toBe(6);
    expect(locateYaml(plant, ['defaults', 'bleedMm'])).toBe(7);
    expect(locateYaml(plant, ['presses', 0, 'gripperMm'])).toBe(3);
    expect(locateYaml(plant, ['stocks'])).toBeNull();
  });
});
