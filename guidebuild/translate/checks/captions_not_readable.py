"""A film's captions can't be read.

A browser shows no captions at all then, and says nothing about it.

Source: W3C WebVTT: a file begins with `WEBVTT`; SubRip has no standard, its times are common practice.
"""

from guidebuild.proof.hit import Rule
from guidebuild.source.finding import Category, Loudness

RULE = Rule(category=Category.TRANSLATION, loudness=Loudness.ERROR)

MESSAGE = "these captions can't be read: {what}"

HELP = "{do}"
