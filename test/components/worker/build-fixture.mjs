/** Builds the layer whose questions do what questions can do: `node test/components/worker/build-fixture.mjs`. */
import { fileURLToPath } from 'node:url';
import { buildLayers } from '../../../core/worker/build-layers.mjs';

const path = (name) => fileURLToPath(new URL(name, import.meta.url));
await buildLayers(
  {
    base: { entry: path('../../../core/worker/layers/base.ts') },
    fixture: { entry: path('fixture-core.ts'), needs: 'base' },
  },
  path('.'),
);
