import type { Catalogue } from '@becket/core';

export const german: Catalogue = {
  'Cannot keep this: at least one value is needed, none was found. Type one.':
    'Nichts zu speichern: Gebraucht wird mindestens ein Wert, gefunden wurde keiner. Geben Sie einen ein.',
  'Pitch and air as found': 'Stimmhöhe und Luft, wie vorgefunden',
  'Read the air before the torque: a block grips less in a dry season. Pitch at a few notes says how far the whole piano has to come.':
    'Messen Sie die Luft vor dem Drehmoment: In trockener Zeit hält ein Stimmstock weniger. Die Tonhöhe einiger Töne sagt, wie weit das ganze Instrument gezogen werden muss.',
  'Pitch and air': 'Stimmhöhe und Luft',
  'Keep what is filled in': 'Ausgefülltes speichern',
  'Pitch and air, kept': 'Stimmhöhe und Luft, gespeichert',
  'Take back {label} {figure}': '{label} {figure} zurücknehmen',
  'Take back': 'Zurücknehmen',
  "Cannot read '{found}' as {label}: a number in {unit} is needed. Type it again.":
    '„{found}“ lässt sich nicht als {label} lesen: Gebraucht wird eine Zahl in {unit}. Geben Sie sie noch einmal ein.',
  'The piano': 'Das Instrument',
  Decision: 'Entscheidung',
  'Earlier surveys of this piano': 'Frühere Durchsichten dieses Instruments',
  'No other job is on this device.': 'Auf diesem Gerät ist kein anderer Auftrag.',
  'From the job': 'Aus dem Auftrag',
  'choose one': 'wählen Sie einen',
  'Copy its survey here': 'Seine Durchsicht hierher abschreiben',
  'Then and now': 'Damals und jetzt',
  'Keep the description': 'Beschreibung speichern',
  'stands on everything you keep here now': 'steht auf allem, was Sie hier jetzt speichern',
  '“Not to be seen” is an honest answer: it stays on the list of unknowns.':
    '„Nicht zu sehen“ ist eine ehrliche Antwort: Es bleibt auf der Liste des Unbekannten.',
  'Parts of the piano': 'Teile des Instruments',
  'The plate carries the whole pull, some 18 tonnes-force on a grand. A crack in it is judged by the maker’s data and a specialist, not here. Tune nothing up before that.':
    'Die Gussplatte trägt den ganzen Zug, bei einem Flügel etwa 18 Tonnen. Einen Riss darin beurteilen die Angaben des Herstellers und eine Fachkraft, nicht diese Seite. Ziehen Sie vorher nichts höher.',
  'From beneath, with a light held flat to the board. Have a vertical held by a second person before it is tilted.':
    'Von unten, mit einer Leuchte flach am Boden. Lassen Sie ein Klavier von einer zweiten Person halten, bevor es gekippt wird.',
  'Go to the decision.': 'Zur Entscheidung.',
  Change: 'Ändern',
  'Something more': 'Noch etwas',
  'Something seen': 'Etwas gesehen',
  'Finding: {label}': 'Befund: {label}',
  'What is seen': 'Was zu sehen ist',
  'What to do': 'Was zu tun ist',
  'Does the repair hold': 'Hält die Reparatur',
  Section: 'Abschnitt',
  'Keep the finding': 'Befund speichern',
  'Cannot keep ‘{label}’: what is seen is needed, nothing was found. Say it in a few words.':
    '„{label}“ lässt sich nicht speichern: Gebraucht wird, was zu sehen ist, gefunden wurde nichts. Sagen Sie es in wenigen Worten.',
  'Cannot keep ‘{label}’: how grave it is is needed, nothing was chosen. Choose slight, clear or grave.':
    '„{label}“ lässt sich nicht speichern: Gebraucht wird, wie schwer es wiegt, gewählt wurde nichts. Wählen Sie leicht, deutlich oder schwer.',
  'Cannot keep ‘{label}’: what to do about it is needed, nothing was chosen. Choose one.':
    '„{label}“ lässt sich nicht speichern: Gebraucht wird, was zu tun ist, gewählt wurde nichts. Wählen Sie eines.',
  "Cannot keep ‘{label}’: a length above 0 and up to 3 m is needed, '{found}' was found. Check the unit.":
    '„{label}“ lässt sich nicht speichern: Gebraucht wird eine Länge über 0 und bis 3 m, gefunden wurde „{found}“. Prüfen Sie die Einheit.',
  'that the pitch was read at': 'an dem die Tonhöhe gemessen wurde',
  'Pitch (cents)': 'Tonhöhe (Cent)',
  'below is negative: -35': 'darunter ist negativ: -35',
  'in the room, near the piano': 'im Raum, nahe am Instrument',
  '{quantity} at {note}': '{quantity} bei {note}',
  '{copied, plural, one {# line was} other {# lines were}} copied.':
    '{copied, plural, one {# Zeile wurde} other {# Zeilen wurden}} abgeschrieben.',
  '{already} stood here already.': '{already} standen hier schon.',
  'Not on this piano as described: {things}.':
    'An diesem Instrument, wie es beschrieben ist, nicht vorhanden: {things}.',
  'Choose grand or vertical first.': 'Wählen Sie zuerst Flügel oder Klavier.',
  'The job, the customer and what is asked for': 'Der Auftrag, der Kunde und was gewünscht ist',
  'The job': 'Der Auftrag',
  'Keep the job': 'Auftrag speichern',
  'The job is kept.': 'Der Auftrag ist gespeichert.',
  'The description is kept.': 'Die Beschreibung ist gespeichert.',
  Sound: 'In Ordnung',
  'Not to be seen': 'Nicht zu sehen',
  'Not on this piano': 'Hier nicht vorhanden',
  '{answered} of {of} things are answered. {hint}': '{answered} von {of} Punkten sind beantwortet. {hint}',
  '{answered} of {of} answered': '{answered} von {of} beantwortet',
  'Go on: {part}': 'Weiter: {part}',
  'Everything of the survey is answered. {findings} {link}':
    'Alles der Durchsicht ist beantwortet. {findings} {link}',
  'Earlier survey, {day}: {line}': 'Frühere Durchsicht, {day}: {line}',
  'Change: {label}, {line}': 'Ändern: {label}, {line}',
  'Take back: {label}, {line}': 'Zurücknehmen: {label}, {line}',
  'taken back in the survey': 'in der Durchsicht zurückgenommen',
  'Near note': 'Nahe beim Ton',
  'such as F#3, or tap the plan': 'etwa F#3, oder auf den Plan tippen',
  'Where exactly': 'Wo genau',
  'such as beside rib 4': 'etwa neben Rippe 4',
  'How long or wide ({unit})': 'Wie lang oder breit ({unit})',
  'so that a later survey can tell whether it grew':
    'damit eine spätere Durchsicht sagen kann, ob es gewachsen ist',
  'the repair {repair, select, holds {holds} fails {fails} other {cannot be told}}':
    'die Reparatur {repair, select, holds {hält} fails {hält nicht} other {lässt sich nicht beurteilen}}',
  '{seen, plural, one {# finding} other {# findings}}, {stops, plural, one {# that stops} other {# that stop}} the job.':
    '{seen, plural, one {# Befund} other {# Befunde}}, davon {stops, plural, one {#, der den Auftrag anhält} other {#, die den Auftrag anhalten}}.',
};
