#!/usr/bin/python3
"""Makes the spoken clips and the tones: English from prompts.json, every other language from its translations in qml/i18n.

Usage: make.py [--language CODE]... [--only ID]... [--voice NAME] [--out FOLDER [--stages]] | make.py --check
Needs sox, opus-tools, python3-numpy; festival and festvox-us-slt-hts (Debian) for the voice "slt"; py-nanotts (PyPI) for the others. Run it again after changing a
text; the clips are kept in the tree so that nobody needs a speech synthesizer to build the app. --voice tries another voice, into a
folder of its own (measure.py compares them). --stages keeps three folders there, of one and the same speech, since SVOX Pico says a text
in another way from run to run: came, as the voice said it; clear, the same made clear; opus, the clip made of that. --check fails where
a text is not the one that its clip says, or the clips take too much room.
"""
import argparse
import json
import math
import pathlib
import random
import shutil
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
KBITS = "24"  # a second, of Opus (LICENCE.md has what others would take)
# Peak of every clip, in dB below full scale: loud over running water, with room left so that nothing clips.
PEAK_DB = "-3"
# What makes a voice clear over water (measured: LICENCE.md). Water is loudest below 300 Hz, and words are told apart above 1 kHz.
CLEAR = {"high_pass_hz": 300, "presence_hz": 2400, "presence_db": 7, "compress_above_db": -24, "ratio": 3, "into_limiter_db": 8}

TONES = {
    # id: what sox is to synthesize. All short, plain and unlike each other; what is spoken after a step's or a minute's
    # tone waits for it, so these two are over within a tenth of a second.
    "step": ["synth", "0.09", "sine", "660", "fade", "q", "0.005", "0.09", "0.04"],
    "minute": ["synth", "0.08", "sine", "520", "fade", "q", "0.005", "0.08", "0.04"],
    "countdown": ["synth", "0.09", "sine", "880", "fade", "q", "0.005", "0.09", "0.05"],
    "done": ["synth", "0.7", "sine", "523", "sine", "659", "sine", "784", "remix", "-", "fade", "q", "0.02", "0.7", "0.4"],
    "alarm": ["synth", "0.6", "square", "740", "synth", "0.6", "square", "amod", "8", "fade", "q", "0.005", "0.6", "0.02"],
}

MOST_BYTES = 4_000_000  # of all clips and tones in the tree (our own choice)

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


def smoothed(values, seconds):
    import numpy
    window = numpy.hanning((int(int(RATE) * seconds) | 1) + 2)[1:-1]
    half = len(window) // 2
    return numpy.convolve(numpy.pad(values, half, mode="edge"), window / window.sum(), mode="valid")


def make_clear(file):
    """Less of what water covers, more of what tells words apart, soft syllables raised, and peaks held without distortion."""
    import numpy
    with wave.open(str(file)) as said:
        sound = numpy.frombuffer(said.readframes(said.getnframes()), dtype="<i2") / 32768
    peak = 10 ** (float(PEAK_DB) / 20)
    length = len(sound) + int(RATE) // 10
    hertz = numpy.maximum(numpy.fft.rfftfreq(length, 1 / int(RATE)), 1)
    gain = 1 / numpy.sqrt(1 + (CLEAR["high_pass_hz"] / hertz) ** 8)
    gain *= 10 ** (CLEAR["presence_db"] / 20 * numpy.exp(-(numpy.log2(hertz / CLEAR["presence_hz"]) / 1.1) ** 2))
    sound = numpy.fft.irfft(numpy.fft.rfft(sound, length) * gain, length)[:len(sound)]
    sound *= peak / abs(sound).max()
    loud = 10 * numpy.log10(numpy.maximum(smoothed(sound ** 2, 0.03), 1e-9))
    sound *= 10 ** (-numpy.maximum(loud - CLEAR["compress_above_db"], 0) * (1 - 1 / CLEAR["ratio"]) / 20)
    sound *= peak / abs(sound).max() * 10 ** (CLEAR["into_limiter_db"] / 20)
    reach = int(int(RATE) * 0.004) | 1
    top = numpy.lib.stride_tricks.sliding_window_view(numpy.pad(abs(sound), reach // 2, mode="edge"), reach).max(axis=1)
    sound = numpy.clip(sound * smoothed(numpy.minimum(1, peak / numpy.maximum(top, 1e-9)), 0.004), -peak, peak)
    with wave.open(str(file), "wb") as out:
        out.setparams((1, 2, int(RATE), 0, "NONE", ""))
        out.writeframes(numpy.round(sound * 32767).astype("<i2").tobytes())


def speak(text, voice, out, stages=None):
    """The clip of that text; into the folders of stages, if any, what it was before."""
    with tempfile.TemporaryDirectory() as folder:
        raw = pathlib.Path(folder) / "raw.wav"
        synthesize(text, voice, raw)
        # Silence trimmed at both ends, then a little left so that clips do not run into each other.
        trim = ["silence", "1", "0.02", "0.4%", "reverse"]
        even = pathlib.Path(folder) / "even.wav"
        run("sox", "-D", str(raw), "-b", "16", "-r", RATE, str(even), *trim, *trim, "pad", "0.04", "0.12", "norm", PEAK_DB)
        if stages:
            shutil.copy(even, stages / "came" / f"{out.stem}.wav")
        make_clear(even)
        if stages:
            shutil.copy(even, stages / "clear" / f"{out.stem}.wav")
        # Without dither, and with a serial number that is not drawn by chance, the same text gives the same file.
        run("opusenc", "--quiet", "--bitrate", KBITS, "--serial", "1", "--discard-comments", str(even), str(out))


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


def make_clips(voice, folder, texts, wanted, stages=None):
    folders = [folder] + ([stages / "came", stages / "clear"] if stages else [])
    for one in folders:
        one.mkdir(parents=True, exist_ok=True)
    for name, text in texts.items():
        if not wanted or name in wanted:
            speak(text, voice, folder / f"{name}.opus", stages)
    # What was said, so that a test sees a text that changed since.
    file = folder / "said.json"
    before = json.loads(file.read_text(encoding="utf-8")) if file.exists() else {}
    said = {name: text if not wanted or name in wanted else before.get(name, "") for name, text in sorted(texts.items())}
    for one in folders:
        (one / "said.json").write_text(json.dumps(said, ensure_ascii=False, indent=1) + "\n", encoding="utf-8")


def check(prompts):
    """What is wrong with the clips, a line each."""
    wrong = []
    for language in VOICES:
        texts = texts_of(language, prompts)
        if language == "en" or not texts:  # the English texts are held together with the clips by tests/qml/PromptsTest.cpp
            continue
        file = HERE / language / "said.json"
        said = json.loads(file.read_text(encoding="utf-8")) if file.exists() else {}
        wrong += [f"{language}/{name}.opus says something else: run assets/voice/make.py --language {language} --only {name}"
                  for name, text in texts.items() if said.get(name) != text]
        wrong += [f"{language}/{name}.opus is missing or empty" for name in texts
                  if not (HERE / language / f"{name}.opus").exists() or (HERE / language / f"{name}.opus").stat().st_size < 1024]
        wrong += [f"{clip} is nothing that is said" for clip in (HERE / language).glob("*.opus") if clip.stem not in texts]
    size = sum(f.stat().st_size for folder in (HERE, SOUNDS) for f in folder.rglob("*") if f.suffix in (".opus", ".wav"))
    if size > MOST_BYTES:
        wrong.append(f"the clips take {size} bytes, more than {MOST_BYTES}")
    return wrong


def main():
    parser = argparse.ArgumentParser(description="make the voice clips and tones")
    parser.add_argument("--only", action="append", default=[], help="id of one clip or tone")
    parser.add_argument("--language", action="append", default=[], help="code of one language")
    parser.add_argument("--voice", help="another voice than the chosen one")
    parser.add_argument("--out", type=pathlib.Path, help="folder for its clips")
    parser.add_argument("--stages", action="store_true", help="keep there what each clip was before it became Opus")
    parser.add_argument("--check", action="store_true", help="whether every clip says its text")
    asked = parser.parse_args()
    if asked.stages and not asked.out:
        parser.error("--stages needs a folder of its own: --out")
    wanted = asked.only
    prompts = json.loads((HERE / "prompts.json").read_text(encoding="utf-8"))["prompts"]
    if asked.check:
        wrong = check(prompts)
        print("\n".join(wrong) or "every clip says its text")
        sys.exit(bool(wrong))
    for language, voice in VOICES.items():
        texts = texts_of(language, prompts) if not asked.language or language in asked.language else {}
        if texts:
            folder = asked.out / "opus" if asked.stages else asked.out or HERE / language
            make_clips(asked.voice or voice, folder, texts, wanted, asked.out if asked.stages else None)
    if asked.out or asked.language:
        return
    if not wanted or "bed" in wanted:
        make_bed(SOUNDS / "bed.wav")
    for name, effects in TONES.items():
        if not wanted or name in wanted:
            run("sox", "-n", "-b", "16", "-r", RATE, "-c", "1", str(SOUNDS / f"{name}.wav"), *effects, "norm", PEAK_DB)


if __name__ == "__main__":
    main()
