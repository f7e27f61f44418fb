import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import './look/tokens.css';
import './look/base.css';
import { App } from './App.tsx';

const root = document.getElementById('root');
if (!root) throw new Error('The page has no place for the app.');
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
