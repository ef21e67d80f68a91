/**
 * One line a file, and every failure in full. Jest's own reporters end with a summary of their own, and
 * `npm test` promises one plain line for all lanes together.
 */
const { relative } = require('node:path');

module.exports = class LaneReporter {
  onTestResult(test, result) {
    const ok = result.numFailingTests === 0 && !result.testExecError;
    const seconds = ((result.perfStats.end - result.perfStats.start) / 1000).toFixed(1);
    const counts = `${result.numPassingTests} passed${ok ? '' : `, ${result.numFailingTests} failed`}`;
    process.stdout.write(
      `  ${ok ? 'ok  ' : 'FAIL'} ${relative(process.cwd(), test.path)} (${counts}, ${seconds} s)\n`,
    );
    if (!ok && result.failureMessage) process.stdout.write(`${result.failureMessage}\n`);
  }

  getLastError() {
    return undefined;
  }
};
