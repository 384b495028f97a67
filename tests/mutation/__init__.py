"""The demo guides with one act spoilt at a time: is every mistake that matters noticed?"""
