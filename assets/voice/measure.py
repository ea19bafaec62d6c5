#!/usr/bin/python3
"""How many words of each voice an independent recogniser gets wrong, in quiet and over running water, and how many prompts it takes for
another one of the prompts.

Usage: measure.py MODEL LANGUAGE NAME=FOLDER...
LANGUAGE is en, de, es, fr, it or pt; each FOLDER was made by make.py. MODEL is a folder with a Whisper model as
faster-whisper reads it. Needs faster-whisper, jiwer, numpy and opus-tools. Not part of the tests: the model is far larger than the app.
"""
import json
import pathlib
import re
import subprocess
import sys
import tempfile
import unicodedata
import wave

import numpy

RATE = 16000
OVER_WATER_DB = 6  # of the first voice above the water, which is the same for all: their peaks are as high, so a phone plays them as it plays the first
NUMBERS = {"en": {"15": "fifteen", "10": "ten", "1": "one", "0": "zero"}, "de": {"15": "fünfzehn", "10": "zehn", "1": "eine", "0": "null"},
           "es": {"15": "quince", "10": "diez", "1": "un", "0": "cero"}, "fr": {"15": "quinze", "10": "dix", "1": "une", "0": "zéro"},
           "it": {"15": "quindici", "10": "dieci", "1": "un", "0": "zero"}}


def words(text, language):
    """The words alone, without case and marks; numbers as words."""
    text = unicodedata.normalize("NFC", text).lower()
    found = re.findall(r"[^\W_]+", text)
    return " ".join(NUMBERS.get(language, {}).get(w, w) for w in found)


def water(length, chance):
    """Running water: noise whose lower part is stronger (as pink noise), with bubbles that come and go."""
    spectrum = numpy.fft.rfft(chance.standard_normal(length))
    frequency = numpy.fft.rfftfreq(length, 1 / RATE)
    spectrum *= 1 / numpy.sqrt(numpy.maximum(frequency, 150))
    noise = numpy.fft.irfft(spectrum, length)
    swell = numpy.interp(numpy.arange(length), numpy.arange(0, length + RATE, RATE // 8), chance.uniform(0.6, 1.4, length // (RATE // 8) + 9)[:len(numpy.arange(0, length + RATE, RATE // 8))])
    return noise * swell


def clip(file):
    """Of the clip without its ending, whatever that is."""
    if not file.exists():
        file = next(file.parent.glob(f"{file.stem}.*"))
    with tempfile.TemporaryDirectory() as folder:
        if file.suffix == ".opus":
            decoded = pathlib.Path(folder) / "clip.wav"
            subprocess.run(["opusdec", "--quiet", "--rate", str(RATE), file, decoded], check=True)
            file = decoded
        with wave.open(str(file)) as w:
            return numpy.frombuffer(w.readframes(w.getnframes()), dtype="<i2").astype("float32") / 32768


def loudness(samples):
    """Root of the mean square where somebody speaks."""
    parts = samples[:len(samples) // 320 * 320].reshape(-1, 320)
    power = (parts ** 2).mean(axis=1)
    return numpy.sqrt(power[power > power.max() / 1000].mean())


def main():
    import jiwer  # answers.py needs the water alone
    from faster_whisper import WhisperModel
    model, language, *voices = sys.argv[1:]
    recogniser = WhisperModel(model, device="cpu", compute_type="int8", cpu_threads=1)
    reference = pathlib.Path(voices[0].split("=")[1])
    for voice in voices:
        name, folder = voice.split("=")
        prompts = json.loads((pathlib.Path(folder) / "said.json").read_text(encoding="utf-8"))
        for place in ("quiet", "water"):
            said, heard, wrong = [], [], []
            for number, (prompt, text) in enumerate(sorted(prompts.items())):
                samples = clip(pathlib.Path(folder) / f"{prompt}.wav")
                samples = numpy.concatenate([numpy.zeros(RATE // 4, "float32"), samples, numpy.zeros(RATE // 4, "float32")])
                if place == "water":
                    noise = water(len(samples), numpy.random.default_rng(number)).astype("float32")
                    samples = samples + noise / numpy.sqrt((noise ** 2).mean()) * loudness(clip(reference / f"{prompt}.wav")) / 10 ** (OVER_WATER_DB / 20)
                segments, _ = recogniser.transcribe(samples / max(1, abs(samples).max()), language=language, beam_size=5, temperature=0, condition_on_previous_text=False)
                said.append(words(text, language))
                heard.append(words(" ".join(s.text for s in segments), language))
                if said[-1] != heard[-1]:
                    wrong.append(f"  {prompt}: {heard[-1]}")
            taken = [min(said, key=lambda s: jiwer.wer(s, h)) if h else "" for h in heard]
            mistaken = sum(t != s for t, s in zip(taken, said))
            print(f"{language} {name} {place}: {mistaken} of {len(said)} prompts taken for another one; {100 * jiwer.wer(said, heard):.1f} % of {sum(len(s.split()) for s in said)} words wrong, {len(wrong)} of {len(said)} prompts not whole")
            print("\n".join(wrong))


if __name__ == "__main__":
    main()
