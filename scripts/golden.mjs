// npm run golden: writes the expected files of tests/golden anew. Read the difference before you commit it.
import { ensureDeps } from './deps.mjs';
import { runTool } from './runTool.mjs';

await ensureDeps();
const args = ['run', '--config', 'config/vitest.ts', '--project', 'unit', 'tests/golden', ...process.argv.slice(2)];
const code = await runTool('vitest', args, { env: { UPDATE_GOLDEN: '1' } });
process.exit(code);
