import { parsedXml } from '../../../../../test/kit/value-in.js';
import { Findings } from '../../codec/index.js';
import { writeElement } from '../../xml/index.js';
import {
  enumerationSpan,
  numberSpan,
  type SpanOf,
  shapeSpan,
  spanCodec,
  spanValue,
  stringSpan,
} from './span-types.js';

function spanIn(text: string) {
  const doc = parsedXml(text.replace('<S', '<S xmlns="http://www.CIP4.org/JDFSchema_1_1"'));
  return {
    el: doc.root,
    findings: new Findings(doc, { missing: 'JDF_MISSING', wrong: 'JDF_VALUE' }),
  };
}

function readText<T, R, F>(text: string, kind: SpanOf<T, R, F>): T | undefined {
  const { el, findings } = spanIn(text);
  return spanValue(el, kind, findings);
}

// Which value of a span counts: the standard, reading of spans (Actual, else Preferred, else the first of Range).
describe('spans', () => {
  it('say what was agreed, else what is preferred, else the first of what is acceptable', () => {
    expect(readText('<S Actual="1" Preferred="2" Range="3"/>', numberSpan)).toBe(1);
    expect(readText('<S Preferred="2" Range="3"/>', numberSpan)).toBe(2);
    expect(readText('<S Range="3 ~ 5 7" OfferRange="1"/>', numberSpan)).toBe(3);
    expect(readText('<S Range="Glossy Matte"/>', enumerationSpan)).toBe('Glossy');
    expect(readText('<S><Range>plain white</Range><Range>cream</Range></S>', stringSpan)).toBe('plain white');
    expect(readText('<S Range="72 144 0 ~ 144 144 0"/>', shapeSpan)).toMatchObject({
      widthMm: 25.4,
      heightMm: 50.8,
    });
    expect(readText('<S OfferRange="1"/>', numberSpan)).toBeUndefined();
  });

  it('tell of a value that is none', () => {
    const { el, findings } = spanIn('<S Actual="thick"/>');
    expect(spanValue(el, numberSpan, findings)).toBeUndefined();
    expect(findings.problems).toMatchObject([{ code: 'JDF_VALUE', path: '/S' }]);
  });

  it('are written with the name of their kind', () => {
    const bleed = spanCodec('Bleed', numberSpan).write({ preferred: 3, range: [{ from: 2, to: 5 }] });
    expect(writeElement(bleed)).toBe('<Bleed DataType="NumberSpan" Preferred="3" Range="2 ~ 5"/>');
  });
});
