import { automatic } from './automatic/automatic.driver.js';
import { bench } from './bench/bench.driver.js';
import type { DriverKind } from './device-driver.js';
import { hotFolder } from './hot-folder/hot-folder.driver.js';
import { jmfHttp } from './jmf-http/jmf-http.driver.js';

/** Every way of speaking to devices: one folder and one line each. */
export const driverKinds: readonly DriverKind[] = [automatic, bench, hotFolder, jmfHttp];
