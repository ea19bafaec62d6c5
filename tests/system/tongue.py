"""What the app says in a language, by the English text in the sources; read from the translators' files."""
import pathlib
import xml.etree.ElementTree as xml

FOLDER = pathlib.Path(__file__).resolve().parents[2] / 'qml/i18n'


class Tongue:
    def __init__(self, language):
        self.language = language
        self.words = {}
        for context in xml.parse(FOLDER / f'firstdew_{language}.ts').iter('context'):
            for message in context.iter('message'):
                where, source = context.findtext('name'), message.findtext('source')
                said = message.findtext('translation')
                self.words[(where, source)] = said
                self.words.setdefault((None, source), said)

    def __call__(self, source, *values, of=None):
        """The text as it stands on the screen; `of` names the page where two pages put the same English differently."""
        said = source if self.language == 'en' else self.words[(of, source)]
        for number, value in enumerate(values, 1):
            said = said.replace(f'%{number}', str(value))
        return said
