import '@fontsource/source-sans-3/latin-400.css';
import '@fontsource/source-sans-3/latin-700.css';
import './look/ink.css';
import './look/press.css';
import './page.css';
import './strip/strip.css';
import './headline/headline.css';
import './line/line.css';
import './drawer/drawer.css';
import './drawer/tasks.css';
import './drawer/switches.css';
import './drawer/numbers.css';
import './about/about.css';
import './shelf/shelf.css';
import { render } from 'preact';
import { App } from './App';
import { followAddress } from './address/following';
import { createPage } from './page';
import { saveOnLeaving } from './saving/leaving';
import { stepByKeyboard } from './strip/keys';

const place = document.getElementById('page');
if (place === null) {
  throw new Error('The page has no element to draw into.');
}
const page = createPage();
stepByKeyboard(page.desk, window);
saveOnLeaving(page.saving, window, document);
render(<App page={page} />, place);
void followAddress(page, window);
