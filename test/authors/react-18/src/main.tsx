import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App';
import { Shared } from './Shared';

createRoot(document.getElementById('app')!).render(
  <StrictMode>
    <App />
    <Shared />
  </StrictMode>,
);
