import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'To the page itself': 'Zur Seite selbst',
  'There is nothing at this address': 'Unter dieser Adresse ist nichts',
  'Nothing was lost. {link}': 'Es ging nichts verloren. {link}',
  'Go to the jobs.': 'Zu den Aufträgen.',
  Settings: 'Einstellungen',
  Jobs: 'Aufträge',
  'This device and the server': 'Dieses Gerät und der Server',
  'This device': 'Dieses Gerät',
  'Last exchange': 'Letzter Austausch',
  'none since this page was loaded': 'keiner, seit diese Seite geladen wurde',
  'Only on this device': 'Nur auf diesem Gerät',
  '{count, plural, one {# entry} other {# entries}}': '{count, plural, one {# Eintrag} other {# Einträge}}',
  'Try now': 'Jetzt versuchen',
  '{count, plural, one {# entry} other {# entries}} only here':
    '{count, plural, one {# Eintrag} other {# Einträge}} nur hier',
  '{count, plural, one {# entry has} other {# entries have}} not left this device: the server cannot be reached. They are kept here, and go out when it is back.':
    '{count, plural, one {# Eintrag hat} other {# Einträge haben}} dieses Gerät nicht verlassen: Der Server ist nicht zu erreichen. Alles ist hier gespeichert und geht hinaus, sobald er wieder da ist.',
  '{count, plural, one {# entry has not left this device yet, and is} other {# entries have not left this device yet, and are}} on the way to the server.':
    '{count, plural, one {# Eintrag hat dieses Gerät noch nicht verlassen und ist} other {# Einträge haben dieses Gerät noch nicht verlassen und sind}} auf dem Weg zum Server.',
  'All sent': 'Alles gesendet',
  'Everything on this device is on the server too.': 'Alles auf diesem Gerät ist auch auf dem Server.',
  'Server away': 'Server nicht da',
  'The server cannot be reached. Everything made on this device had reached it before; what you do now is kept here.':
    'Der Server ist nicht zu erreichen. Alles von diesem Gerät war schon dort; was Sie jetzt tun, wird hier gespeichert.',
  'Asking the server': 'Server wird gefragt',
  'The server has not answered yet.': 'Der Server hat noch nicht geantwortet.',
  'Becket: all jobs': 'Becket: alle Aufträge',
  'Start the newer version': 'Neuere Version starten',
  'This job is not on this device yet. Asking the server for it …':
    'Dieser Auftrag ist noch nicht auf diesem Gerät. Der Server wird danach gefragt …',
  'Opening the job …': 'Auftrag wird geöffnet …',
  'All jobs': 'Alle Aufträge',
  'Tasks of this job': 'Schritte dieses Auftrags',
  'Put this away': 'Ausblenden',
  'Map of the piano': 'Plan des Instruments',
  'Hide the plan': 'Plan ausblenden',
  'Show the plan': 'Plan zeigen',
  'Cannot open this job: neither this device nor the server has entries of it. If you scanned a paper, open Becket on the device that made it, wait until its sign says that all is sent, and load this page again. Otherwise go to the jobs and take one from there, or bring it in from its file.':
    'Der Auftrag lässt sich nicht öffnen: Weder dieses Gerät noch der Server hat Einträge davon. Wenn Sie ein Papier gescannt haben, öffnen Sie Becket auf dem Gerät, das es erstellt hat, warten Sie, bis dort alles gesendet ist, und laden Sie diese Seite neu. Sonst gehen Sie zu den Aufträgen und wählen Sie dort einen, oder lesen Sie ihn aus seiner Datei ein.',
  'Cannot open this job now: it is not on this device, and the server cannot be reached. If you scanned a paper, join the network of the shop and load this page again, or bring the job in from its file.':
    'Der Auftrag lässt sich jetzt nicht öffnen: Er ist nicht auf diesem Gerät, und der Server ist nicht erreichbar. Wenn Sie ein Papier gescannt haben, gehen Sie in das Netz der Werkstatt und laden Sie diese Seite neu, oder lesen Sie den Auftrag aus seiner Datei ein.',
  'The working record of a piano that is being restrung. What you enter is kept on this device at once, with or without a network.':
    'Die Arbeitsunterlage eines Instruments, das neu bezogen wird. Was Sie eingeben, ist sofort auf diesem Gerät gespeichert, mit oder ohne Netz.',
  'Reading this device …': 'Gerät wird gelesen …',
  'No job is on this device yet, and the server cannot be reached.':
    'Auf diesem Gerät ist noch kein Auftrag, und der Server ist nicht zu erreichen.',
  'No job is on this device yet.': 'Auf diesem Gerät ist noch kein Auftrag.',
  'Other ways to begin': 'Andere Wege anzufangen',
  'Look around in an invented grand of 1.8 m, with messy readings, gaps and two wrong ones.':
    'Sehen Sie sich in einem erfundenen Flügel von 1,8 m um, mit unsauberen Messwerten, Lücken und zwei falschen.',
  'Open the demo job': 'Beispielauftrag öffnen',
  'Bring in a job that was saved as a file on another device; what is here already stays as it is.':
    'Holen Sie einen Auftrag herein, der auf einem anderen Gerät als Datei gesichert wurde; was schon hier ist, bleibt, wie es ist.',
  'Bring in a job file': 'Auftragsdatei einlesen',
  '▲ {count, plural, one {# entry} other {# entries}} only on this device':
    '▲ {count, plural, one {# Eintrag} other {# Einträge}} nur auf diesem Gerät',
  'on this device and on the server': 'auf diesem Gerät und auf dem Server',
  'on the server; opening it brings it to this device':
    'auf dem Server; beim Öffnen kommt er auf dieses Gerät',
  'as-found record sealed': 'Bestandsaufnahme versiegelt',
  '{entries, plural, one {# entry} other {# entries}}, last on {day}':
    '{entries, plural, one {# Eintrag} other {# Einträge}}, der letzte am {day}',
  'Your name, as it stands on every entry you make': 'Ihr Name, wie er auf jedem Ihrer Einträge steht',
  'Keep the name': 'Namen speichern',
  'A job needs a title, such as the piano and its owner.':
    'Ein Auftrag braucht einen Titel, etwa das Instrument und wem es gehört.',
  'New job': 'Neuer Auftrag',
  Title: 'Titel',
  'What the customer asks for': 'Was der Kunde wünscht',
  'in her own words; may stay empty': 'in eigenen Worten; kann leer bleiben',
  'Open the job': 'Auftrag öffnen',
  'Settings of this device': 'Einstellungen dieses Geräts',
  "This device's name": 'Name dieses Geräts',
  'stands on every entry made here': 'steht auf jedem Eintrag, der hier entsteht',
  'Lengths are typed and shown in': 'Längen werden eingegeben und gezeigt in',
  millimetres: 'Millimeter',
  inches: 'Zoll',
  Language: 'Sprache',
  'as the device': 'wie das Gerät',
  'Light or dark': 'Hell oder dunkel',
  light: 'hell',
  dark: 'dunkel',
  'What is kept here': 'Was hier gespeichert ist',
  'The program': 'Das Programm',
  'is kept on this device and starts without a network':
    'ist auf diesem Gerät gespeichert und startet ohne Netz',
  'is not kept on this device yet; load the page once more while the network is there':
    'ist noch nicht auf diesem Gerät gespeichert; laden Sie die Seite noch einmal, solange das Netz da ist',
  'The journals': 'Die Journale',
  'this browser does not say whether it may remove them':
    'dieser Browser sagt nicht, ob er sie entfernen darf',
  'the browser has promised not to remove them by itself':
    'der Browser hat zugesagt, sie nicht von sich aus zu entfernen',
  'the browser may remove them when space runs short: install Becket to the home screen, or save jobs as files':
    'der Browser darf sie entfernen, wenn der Platz knapp wird: Legen Sie Becket auf den Startbildschirm, oder sichern Sie Aufträge als Dateien',
  Space: 'Platz',
  '{used} MB used of {quota} GB': '{used} MB belegt von {quota} GB',
  'Becket cannot start here': 'Becket kann hier nicht starten',
  'Load again': 'Neu laden',
};
