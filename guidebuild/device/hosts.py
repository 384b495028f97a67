"""What a part sits on, down to the base: the `mounted-on` tree, in every configuration."""

from collections.abc import Iterator
from dataclasses import dataclass

from guidebuild.device.presence import Presence


@dataclass(frozen=True, slots=True)
class Chain:
    """In `where`: a part, its host, that one's host, … as far as it goes. Never empty."""

    where: int
    parts: tuple[str, ...]


class Hosts:
    """Asked once a part, then known. Most parts have just one chain, good everywhere."""

    def __init__(self, presence: Presence) -> None:
        self.presence = presence
        self._hosts: dict[str, list[tuple[str, int]]] = {}
        self._chains: dict[str, tuple[Chain, ...]] = {}
        self._on: dict[str, list[str]] | None = None

    def host(self, key: str) -> list[tuple[str, int]]:
        """The part that this one sits on: key and where. Nothing for the base and what is outside."""
        found = self._hosts.get(key)
        if found is None:
            host = self.presence.device.part(key).host
            found = self._hosts[key] = [] if host is None else self.presence.parts([host])
        return found

    def chains(self, key: str) -> tuple[Chain, ...]:
        """The way down from a part, itself included; disjoint configurations."""
        found = self._chains.get(key)
        if found is None:
            found = self._chains[key] = tuple(self._down(key))
        return found

    def carried(self, key: str) -> tuple[str, ...]:
        """All that the record puts on a part, directly or on what is on it, in the record's order."""
        if self._on is None:
            self._on = {}
            for part in self.presence.device.parts:
                for host, _ in self.host(part.key):
                    self._on.setdefault(host, []).append(part.key)
        found: dict[str, None] = {}
        waiting = list(self._on.get(key, ()))
        while waiting:
            one = waiting.pop(0)
            if one not in found and one != key:
                found[one] = None
                waiting.extend(self._on.get(one, ()))
        return tuple(found)

    def on(self, key: str, part: str) -> int:
        """Where the record puts a part on another, directly or on what is on it."""
        where = 0
        for chain in self.chains(key):
            if part in chain.parts:
                where |= chain.where
        return where

    def _down(self, key: str) -> Iterator[Chain]:
        both = self.presence.both
        waiting: list[tuple[int, tuple[str, ...]]] = [(self.presence.where[key], (key,))]
        while waiting:
            where, parts = waiting.pop()
            alone = where
            for host, there in self.host(parts[-1]):
                on_it = both(where, there)
                if on_it and host not in parts:
                    waiting.append((on_it, (*parts, host)))
                    alone = 0 if on_it is alone else alone ^ (alone & on_it)
            if alone:
                yield Chain(alone, parts)
