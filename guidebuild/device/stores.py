"""What fills a store, what empties it, and which stores are in a part."""

from guidebuild.device.presence import Presence
from guidebuild.source.said import Said

Index = dict[str, list[tuple[str, int]]]


class Stores:
    """The stores of a record, turned round: from what fills, empties or contains them to the stores."""

    def __init__(self, presence: Presence) -> None:
        self.filled_by: Index = {}
        self.emptied_by: Index = {}
        self.inside: Index = {}
        for store in presence.device.stores:
            where = presence.where[store.key]
            if where:
                inside = () if store.inside is None else (store.inside,)
                self._note(presence, self.filled_by, store.filled_by, (store.key, where))
                self._note(presence, self.emptied_by, store.emptied_by, (store.key, where))
                self._note(presence, self.inside, inside, (store.key, where))

    def _note(
        self, presence: Presence, index: Index, ids: tuple[Said, ...], store: tuple[str, int]
    ) -> None:
        for key, _ in presence.of(ids):
            index.setdefault(key, []).append(store)
