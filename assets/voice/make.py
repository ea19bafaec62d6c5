#!/usr/bin/python3
"""Makes the spoken clips and the tones from prompts.json.

Usage: make.py [--only ID]...
Needs festival, festvox-us-slt-hts and sox. Run it again after changing a text; the clips are kept in the tree so
that nobody needs a speech synthesizer to build the app.
"""
import argparse
import json
import pathlib
import subprocess
import sys
import tempfile

HERE = pathlib.Path(__file__).resolve().parent
SOUNDS = HERE.parent / "sounds"
VOICE = "(voice_cmu_us_slt_arctic_hts)"
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


def run(*command, **kwargs):
    done = subprocess.run(command, capture_output=True, text=True, **kwargs)
    if done.returncode:
        sys.exit(f"{command[0]} failed: {done.stderr.strip()}")


def speak(prompt, out):
    with tempfile.TemporaryDirectory() as folder:
        raw = pathlib.Path(folder) / "raw.wav"
        run("text2wave", "-eval", VOICE, "-o", str(raw), input=prompt["text"])
        # Silence trimmed at both ends, then a little left so that clips do not run into each other.
        trim = ["silence", "1", "0.02", "0.4%", "reverse"]
        run("sox", str(raw), "-b", "16", "-r", RATE, str(out), *trim, *trim, "pad", "0.03", "0.12", "norm", PEAK_DB)


def main():
    parser = argparse.ArgumentParser(description="make the voice clips and tones")
    parser.add_argument("--only", action="append", default=[], help="id of one clip or tone")
    wanted = parser.parse_args().only
    prompts = json.loads((HERE / "prompts.json").read_text(encoding="utf-8"))["prompts"]
    for prompt in prompts:
        if not wanted or prompt["id"] in wanted:
            speak(prompt, HERE / "en" / f"{prompt['id']}.wav")
    for name, effects in TONES.items():
        if not wanted or name in wanted:
            run("sox", "-n", "-b", "16", "-r", RATE, "-c", "1", str(SOUNDS / f"{name}.wav"), *effects, "norm", PEAK_DB)


if __name__ == "__main__":
    main()
