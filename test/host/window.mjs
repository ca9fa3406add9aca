// A workbench page in a headless Chromium, which can reach its own server and nothing else.
import { chromiumPath, hostPackage } from '../../src/build/host/host-tools.mjs';

// Runs as root and in containers, and asks nobody anything.
const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--disable-dev-shm-usage',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Starts a Chromium that keeps all its files in one folder. */
export function launchChromium(home) {
  return hostPackage('playwright-core').chromium.launch({
    executablePath: chromiumPath(),
    args: flags,
    timeout: 120_000,
    env: { ...process.env, HOME: home, TMPDIR: home, XDG_CONFIG_HOME: home, XDG_CACHE_HOME: home },
    handleSIGINT: false, // host-server.mjs ends the process, and that ends Chromium
    handleSIGTERM: false,
    handleSIGHUP: false,
  });
}

/**
 * Opens a window on a folder.
 * @param server as startServer answers it
 * @param options.scratch where Chromium keeps its files
 * @param options.folder the folder, or the file of a workspace, to open; without one the address is taken as it is
 * @param options.start window options of VS Code, as pairs of name and value
 * @param options.onLog gets what the extension host writes to its console: level and arguments
 * @param options.onExit gets the exit code when a test run has ended
 * @returns the page, the addresses of other hosts that were asked for (and refused), and what closes it
 */
export async function openWindow(server, { scratch, folder, start = [], onLog, onExit }) {
  const browser = await launchChromium(scratch);
  const context = await browser.newContext({
    viewport: { width: 1280, height: 800 },
    permissions: ['clipboard-read', 'clipboard-write'],
  });
  context.setDefaultTimeout(60_000);
  const refused = [];
  await context.route(
    (address) => address.protocol.startsWith('http') && address.host !== server.url.host,
    (route) => {
      refused.push(route.request().url());
      return route.abort();
    },
  );
  const page = await context.newPage();
  if (onLog) await page.exposeFunction('codeAutomationLog', onLog);
  if (onExit) await page.exposeFunction('codeAutomationExit', onExit);
  await page.goto(address(server.url, folder, start), { timeout: 120_000 });
  return { page, refused, close: () => browser.close() };
}

function address(base, folder, start) {
  const url = new URL(base);
  if (folder === undefined) return url.href;
  url.searchParams.set(folder.endsWith('.code-workspace') ? 'workspace' : 'folder', folder);
  const payload = [['skipWelcome', 'true'], ['skipReleaseNotes', 'true'], ...start];
  url.searchParams.set('payload', JSON.stringify(payload));
  return url.href;
}
