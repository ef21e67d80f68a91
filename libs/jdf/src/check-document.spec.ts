import { parsedXml } from '../../../test/kit/value-in.js';
import { checkDocument } from './index.js';

function verdict(text: string) {
  const doc = parsedXml(text);
  const { kind, version, problems } = checkDocument(doc);
  return [kind, version, ...problems.map(({ severity, code, line }) => `${severity} ${code} ${line}`)];
}

const JMF =
  'xmlns="http://www.CIP4.org/JDFSchema_1_1" SenderID="s" TimeStamp="2024-07-25T12:28:01Z" Version="1.7"';

describe('checking a document of any kind', () => {
  it.each([
    [
      ['jdf', '1.9', 'error JDF_MISSING 1'],
      '<JDF xmlns="http://www.CIP4.org/JDFSchema_1_1" Version="1.9" ID="n" Type="ProcessGroup"/>',
    ],
    [['jmf', '1.7'], `<JMF ${JMF}><Query ID="a" Type="SubmissionMethods"/></JMF>`],
    [
      ['jmf', '1.7', 'error JMF_PARAMETER_MISSING 2'],
      `<JMF ${JMF}>\n<Command ID="a" Type="SubmitQueueEntry"/></JMF>`,
    ],
    [['jmf', '1.7', 'warning JMF_TYPE 1'], `<JMF ${JMF}><Query ID="a" Type="Juggle"/></JMF>`],
    [['jmf', '1.7', 'error JMF_CONTENT 1'], `<JMF ${JMF}/>`],
    [
      ['xjdf', '2.1'],
      '<XJDF xmlns="http://www.CIP4.org/JDFSchema_2_0" Version="2.1" JobID="j" Types="Product"/>',
    ],
    [
      ['xjdf', '2.1', 'error JDF_VALUE 2', 'error JDF_MISSING 1'],
      '<XJDF xmlns="http://www.CIP4.org/JDFSchema_2_0" Version="2.1"\n JobID="two words"/>',
    ],
    [['unknown', null, 'error XML_NAMESPACE 1'], '<JDF/>'],
  ])('gives %j', (expected, text) => {
    expect(verdict(text)).toEqual(expected);
  });
});
