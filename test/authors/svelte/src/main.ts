import { mount } from 'svelte';
import App from './App.svelte';
import Shared from './Shared.svelte';

const target = document.getElementById('app')!;
mount(App, { target });
mount(Shared, { target });
