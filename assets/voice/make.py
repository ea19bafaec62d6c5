#!/usr/bin/python3
"""Makes the spoken clips and the tones: English from prompts.json, every other language from its translations in qml/i18n.

Usage: make.py [--language CODE]... [--only ID]... [--voice NAME --out FOLDER] | make.py --check
Needs sox; festival and festvox-us-slt-hts (Debian) for the voice "slt"; py-nanotts (PyPI) for the others. Run it again after changing a
text; the clips are kept in the tree so that nobody needs a speech synthesizer to build the app. --voice tries another voice, into a
folder of its own (measure.py compares them). --check fails where a text is not the one that its clip says, or the clips take too much room.
"""
import argparse
import json
import math
import pathlib
import random
import struct
import subprocess
import sys
import tempfile
import wave
from xml.etree import ElementTree

HERE = pathlib.Path(__file__).resolve().parent
SOUNDS = HERE.parent / "sounds"
TEXTS = HERE.parent.parent / "qml" / "i18n"
# The voice of each language; French and Italian are made as soon as the app has their texts.
VOICES = {"en": "slt", "de": "de-DE", "es": "es-ES", "fr": "fr-FR", "it": "it-IT"}
SLT = "(voice_cmu_us_slt_arctic_hts)"
RATE = "16000"
# Peak of every clip, in dB below full scale: loud over running water, with room left so that nothing clips.
PEAK_DB = "-3"

TONES = {
    # id: what sox is to synthesize. All short, plain and unlike each other; what is spoken after a step's or a minute's
    # tone waits for it, so these two are over within a tenth of a second.
    "step": ["synth", "0.09", "sine", "660", "fade", "q", "0.005", "0.09", "0.04"],
    "minute": ["synth", "0.08", "sine", "520", "fade", "q", "0.005", "0.08", "0.04"],
    "countdown": ["synth", "0.09", "sine", "880", "fade", "q", "0.005", "0.09", "0.05"],
    "done": ["synth", "0.7", "sine", "523", "sine", "659", "sine", "784", "remix", "-", "fade", "q", "0.02", "0.7", "0.4"],
    "alarm": ["synth", "0.6", "square", "740", "synth", "0.6", "square", "amod", "8", "fade", "q", "0.005", "0.6", "0.02"],
}

MOST_BYTES = 18_000_000  # of all clips and tones in the tree (our own choice); the package is smaller, since they are compressed there

# The bed under a session: many soft tones without a beginning or an end, so quiet that it can be left on.
BED = {"seconds": 4, "lowest": 180, "highest": 900, "tones": 60, "level_db": -46}


def run(*command, **kwargs):
    done = subprocess.run(command, capture_output=True, text=True, **kwargs)
    if done.returncode:
        sys.exit(f"{command[0]} failed: {done.stderr.strip()}")


def synthesize(text, voice, raw):
    if voice == "slt":
        run("text2wave", "-eval", SLT, "-o", str(raw), input=text)
        return
    from py_nanotts import NanoTTS
    with wave.open(str(raw), "wb") as file:
        file.setparams((1, 2, 16000, 0, "NONE", ""))
        file.writeframes(NanoTTS().speak(text, voice=voice))


def speak(text, voice, out):
    with tempfile.TemporaryDirectory() as folder:
        raw = pathlib.Path(folder) / "raw.wav"
        synthesize(text, voice, raw)
        # Silence trimmed at both ends, then a little left so that clips do not run into each other.
        trim = ["silence", "1", "0.02", "0.4%", "reverse"]
        run("sox", str(raw), "-b", "16", "-r", RATE, str(out), *trim, *trim, "pad", "0.03", "0.12", "norm", PEAK_DB)


def texts_of(language, prompts):
    """The text of each prompt in that language by its id, or nothing where the app does not have them all."""
    if language == "en":
        return {p["id"]: p["text"] for p in prompts}
    file = TEXTS / f"firstdew_{language}.ts"
    if not file.exists():
        return {}
    translated = {m.findtext("source"): m.findtext("translation") for c in ElementTree.parse(file).iter("context")
                  if c.findtext("name") == "Prompts" for m in c.iter("message")}
    texts = {p["id"]: translated.get(p["text"]) for p in prompts}
    return texts if all(texts.values()) else {}


def make_bed(out):
    rate, length = int(RATE), BED["seconds"] * int(RATE)
    chance = random.Random(1)
    # Whole numbers of waves, so that the end goes over into the beginning.
    waves = [(round(chance.uniform(BED["lowest"], BED["highest"]) * BED["seconds"]), chance.uniform(0, 2 * math.pi)) for _ in range(BED["tones"])]
    samples = [sum(math.sin(2 * math.pi * n * i / length + phase) for n, phase in waves) for i in range(length)]
    loud = math.sqrt(sum(s * s for s in samples) / length)
    scale = 32767 * 10 ** (BED["level_db"] / 20) / loud
    with wave.open(str(out), "wb") as file:
        file.setparams((1, 2, rate, 0, "NONE", ""))
        file.writeframes(struct.pack(f"<{length}h", *(round(s * scale) for s in samples)))


def make_clips(language, voice, folder, texts, wanted):
    folder.mkdir(parents=True, exist_ok=True)
    for name, text in texts.items():
        if not wanted or name in wanted:
            speak(text, voice, folder / f"{name}.wav")
    # What was said, so that a test sees a text that changed since.
    file = folder / "said.json"
    before = json.loads(file.read_text(encoding="utf-8")) if file.exists() else {}
    said = {name: text if not wanted or name in wanted else before.get(name, "") for name, text in sorted(texts.items())}
    file.write_text(json.dumps(said, ensure_ascii=False, indent=1) + "\n", encoding="utf-8")


def check(prompts):
    """What is wrong with the clips, a line each."""
    wrong = []
    for language in VOICES:
        texts = texts_of(language, prompts)
        if language == "en" or not texts:  # the English texts are held together with the clips by tests/qml/PromptsTest.cpp
            continue
        file = HERE / language / "said.json"
        said = json.loads(file.read_text(encoding="utf-8")) if file.exists() else {}
        wrong += [f"{language}/{name}.wav says something else: run assets/voice/make.py --language {language} --only {name}"
                  for name, text in texts.items() if said.get(name) != text]
        wrong += [f"{language}/{name}.wav is missing or empty" for name in texts
                  if not (HERE / language / f"{name}.wav").exists() or (HERE / language / f"{name}.wav").stat().st_size < 4096]
        wrong += [f"{clip} is nothing that is said" for clip in (HERE / language).glob("*.wav") if clip.stem not in texts]
    size = sum(f.stat().st_size for folder in (HERE, SOUNDS) for f in folder.rglob("*.wav"))
    if size > MOST_BYTES:
        wrong.append(f"the clips take {size} bytes, more than {MOST_BYTES}")
    return wrong


def main():
    parser = argparse.ArgumentParser(description="make the voice clips and tones")
    parser.add_argument("--only", action="append", default=[], help="id of one clip or tone")
    parser.add_argument("--language", action="append", default=[], help="code of one language")
    parser.add_argument("--voice", help="another voice than the chosen one")
    parser.add_argument("--out", type=pathlib.Path, help="folder for its clips")
    parser.add_argument("--check", action="store_true", help="whether every clip says its text")
    asked = parser.parse_args()
    wanted = asked.only
    prompts = json.loads((HERE / "prompts.json").read_text(encoding="utf-8"))["prompts"]
    if asked.check:
        wrong = check(prompts)
        print("\n".join(wrong) or "every clip says its text")
        sys.exit(bool(wrong))
    for language, voice in VOICES.items():
        texts = texts_of(language, prompts) if not asked.language or language in asked.language else {}
        if texts:
            make_clips(language, asked.voice or voice, asked.out or HERE / language, texts, wanted)
    if asked.out or asked.language:
        return
    if not wanted or "bed" in wanted:
        make_bed(SOUNDS / "bed.wav")
    for name, effects in TONES.items():
        if not wanted or name in wanted:
            run("sox", "-n", "-b", "16", "-r", RATE, "-c", "1", str(SOUNDS / f"{name}.wav"), *effects, "norm", PEAK_DB)


if __name__ == "__main__":
    main()
