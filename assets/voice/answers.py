#!/usr/bin/python3
"""How surely "stop" and "out" are heard at one metre over running water, and how often something else is taken for them.

Usage: answers.py FOLDER TEXTS.ts HOURS
Needs pocketsphinx, pocketsphinx-en-us, flite, festival, espeak-ng, sox, py-nanotts and numpy. Thresholds are chosen on some voices and judged
on others. The gate: at most 1 false alarm in 10 hours of speech and running water, at most 5 % missed.
"""
import math, pathlib, random, re, subprocess, sys, tempfile, wave
from xml.etree import ElementTree
import numpy as np
sys.path.insert(0, str(pathlib.Path(__file__).parent))
from measure import loudness, water
RATE = 16000
MODEL = "/usr/share/pocketsphinx/model/en-us/"
WORDS = ("stop", "out")
SNR = 6
TUNE = ["flite:kal16", "flite:awb", "espeak:en-us+m3", "espeak:en-gb+f2", "flite:kal16:1.25", "flite:awb:0.8", "espeak:en-us+f4", "espeak:en-gb+m7"]
JUDGE = ["flite:rms", "flite:slt", "festival", "pico:en-GB", "pico:en-US", "espeak:en-gb-scotland+m1", "espeak:en-us-nyc+f5", "flite:rms:1.25", "flite:slt:0.8", "festival:1.2"]
MELODY = [0.94, 1.0, 1.06]

def read(f):
    with wave.open(str(f)) as w: return np.frombuffer(w.readframes(w.getnframes()), "<i2").astype("float64") / 32768
def write(f, x):
    with wave.open(str(f), "wb") as w:
        w.setparams((1, 2, RATE, 0, "NONE", "")); w.writeframes((np.clip(x, -1, 1) * 32767).astype("<i2").tobytes())
def say(text, voice, melody=1.0):
    kind, *more = voice.split(":"); raw = "/tmp/ans_raw.wav"; fine = "/tmp/ans_fine.wav"
    stretch = float(more[-1]) if more and re.fullmatch(r"[\d.]+", more[-1]) else 1.0
    if kind == "flite": subprocess.run(["flite", "-voice", more[0], "--setf", f"duration_stretch={1/stretch}", "-t", text, "-o", raw], check=True, capture_output=True)
    elif kind == "espeak": subprocess.run(["espeak-ng", "-v", more[0], "-w", raw, "--stdin"], input=text, text=True, check=True)
    elif kind == "festival": subprocess.run(["text2wave", "-eval", f"(begin (voice_cmu_us_slt_arctic_hts) (Parameter.set 'Duration_Stretch {1/stretch}))", "-o", raw], input=text, text=True, check=True)
    else:
        from py_nanotts import NanoTTS
        with wave.open(raw, "wb") as w: w.setparams((1, 2, 16000, 0, "NONE", "")); w.writeframes(NanoTTS().speak(text, voice=more[0]))
    subprocess.run(["sox", raw, "-r", str(RATE), "-c", "1", "-b", "16", fine, "pitch", str(round(1200 * math.log2(melody))), "norm", "-3"], check=True, capture_output=True)
    return read(fine)
def room(x, chance):
    """A bathroom: reverberation of 0.6 s, at one metre the direct sound 3 dB above it."""
    t = np.arange(int(0.6 * RATE)) / RATE
    tail = chance.standard_normal(len(t)) * 10 ** (-3 * t / 0.6); tail[: int(0.004 * RATE)] = 0
    tail *= 10 ** (-3 / 20) / np.sqrt((tail ** 2).sum()); tail[0] = 1
    n = len(x) + len(tail); return np.fft.irfft(np.fft.rfft(x, n) * np.fft.rfft(tail, n), n)
def over_water(x, chance):
    noise = water(len(x), chance); return 0.3 * (x / loudness(x) + noise / np.sqrt((noise ** 2).mean()) / 10 ** (SNR / 20)) / 3
def heard(files, thresholds):
    """The words that were spotted in each file."""
    kws = pathlib.Path("/tmp/ans.kws"); kws.write_text("".join(f"{w} /{t}/\n" for w, t in thresholds.items()))
    with tempfile.TemporaryDirectory() as folder:
        ctl = pathlib.Path(folder) / "ctl"; ctl.write_text("".join(f"{f.stem}\n" for f in files)); hyp = pathlib.Path(folder) / "hyp"
        subprocess.run(["pocketsphinx_batch", "-hmm", MODEL + "en-us", "-dict", MODEL + "cmudict-en-us.dict", "-kws", str(kws), "-adcin", "yes", "-cepdir", str(files[0].parent), "-cepext", ".wav", "-ctl", str(ctl), "-hyp", str(hyp), "-logfn", "/dev/null"], check=True, capture_output=True)
        return [re.findall(r"\b(stop|out)\b", line.split("(")[0]) for line in hyp.read_text().splitlines()]
def calls(folder, voices, chance):
    folder.mkdir(parents=True, exist_ok=True); files = []
    for v in voices:
        for m in MELODY:
            for w in WORDS:
                f = folder / f"{w}-{len(files):03}.wav"; quiet = np.zeros(RATE)
                write(f, over_water(room(np.concatenate([quiet, say(w.capitalize() + ".", v, m), quiet]), chance), chance)); files.append(f)
    return files
def talk(folder, voices, texts, hours, chance):
    """Speech without the words, and a third of it water alone, in files of about a minute."""
    folder.mkdir(parents=True, exist_ok=True); files, length, n = [], 0, 0
    while length < hours * 3600 * RATE:
        v = voices[len(files) % len(voices)]; part = []
        while sum(map(len, part)) < 40 * RATE:
            part += [say(texts[n % len(texts)], v, chance.choice(MELODY)), np.zeros(int(chance.uniform(0.3, 1.5) * RATE))]; n += 1
        part.append(np.zeros(20 * RATE)); x = over_water(room(np.concatenate(part), chance), chance)
        f = folder / f"talk-{len(files):03}.wav"; write(f, x); files.append(f); length += len(x)
    return files, length / RATE / 3600
def most(false, hours):
    """Upper end of the one-sided 95 % interval of a Poisson rate, per 10 hours."""
    low, high = 0.0, 1000.0
    for _ in range(60):
        mid = (low + high) / 2; p = sum(math.exp(-mid) * mid ** k / math.factorial(k) for k in range(false + 1)); low, high = (mid, high) if p > 0.05 else (low, mid)
    return high / hours * 10
def main():
    folder, ts, hours = pathlib.Path(sys.argv[1]), sys.argv[2], float(sys.argv[3])
    texts = [m.findtext("source") for m in ElementTree.parse(ts).iter("message")]
    texts = [t for t in texts if len(t) > 30 and not re.search(r"%|\bstop|\bout\b", t, re.I)]; random.Random(1).shuffle(texts)
    chance = np.random.default_rng(5)
    tune = calls(folder / "tune", TUNE, chance); judge = calls(folder / "judge", JUDGE, chance)
    tune_talk, tune_hours = talk(folder / "tune-talk", TUNE, texts[::2], hours / 4, chance); judge_talk, judge_hours = talk(folder / "judge-talk", JUDGE, texts[1::2], hours, chance)
    print(f"{len(texts)} sentences; calls {len(tune)} / {len(judge)}; talk {tune_hours:.2f} h / {judge_hours:.2f} h", flush=True)
    rows = {}
    for t in ("1e-1", "1e-2", "1e-5", "1e-10", "1e-20", "1e-30", "1e-40"):
        both = dict.fromkeys(WORDS, t); got = heard(tune, both)
        for w in WORDS:
            own = [g for f, g in zip(tune, got) if f.stem.startswith(w)]; rows[w, t] = sum(w not in g for g in own) / len(own)
        false = heard(tune_talk, both) if float(t) in (1e-1, 1e-5, 1e-10, 1e-20) else []
        print(t, "missed", {w: f"{100 * rows[w, t]:.0f} %" for w in WORDS}, "false an hour", round(sum(map(len, false)) / tune_hours, 1) if false else "-", flush=True)
    chosen = {w: next((t for t in ("1e-1", "1e-2", "1e-5", "1e-10", "1e-20", "1e-30", "1e-40") if rows[w, t] <= 0.05), "1e-40") for w in WORDS}
    got = heard(judge, chosen); false = sum(map(len, heard(judge_talk, chosen)))
    for w in WORDS:
        own = [g for f, g in zip(judge, got) if f.stem.startswith(w)]; print("judged", w, chosen[w], f"missed {sum(w not in g for g in own)} of {len(own)}")
    print(f"judged false {false} in {judge_hours:.2f} h: {false / judge_hours * 10:.0f} in 10 h, at most {most(min(false, 150), judge_hours):.0f}")
main()
