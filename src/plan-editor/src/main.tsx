import '@fontsource/source-sans-3/latin-400.css';
import '@fontsource/source-sans-3/latin-700.css';
import './page.css';
import { render } from 'preact';
import { Welcome } from './welcome/Welcome';

const page = document.getElementById('page');
if (page === null) {
  throw new Error('The page has no element to draw into.');
}
render(<Welcome />, page);
