import { createApp, h } from 'vue';
import App from './App.vue';
import Shared from './Shared.vue';

createApp({ render: () => [h(App), h(Shared)] }).mount('#app');
