// The server, for whoever starts one
export { type AppParts, type BecketApp, createApp } from './app.ts';
export { type Configuration, configurationFrom, defaultPort } from './configuration.ts';
export { AccountsNeeded } from './guards/loopback.ts';
export { serveDataFolder } from './serve-data-folder.ts';
export { CannotListen, type RunningServer, startServer } from './start-server.ts';
