import { render } from 'preact';
import { App } from './app.js';
import { openPlant, startTicking } from './live/index.js';
import { recallTheme } from './look/theme.js';
import { followWidth } from './look/width.js';
import { followAddress } from './route.js';

recallTheme();
followWidth();
followAddress();
openPlant();
startTicking();
render(<App />, document.getElementById('console')!);
