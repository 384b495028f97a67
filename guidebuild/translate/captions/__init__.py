"""Captions of films: what a reader can take in, a translator's budget, chapters; WebVTT and SRT in, WebVTT out."""
